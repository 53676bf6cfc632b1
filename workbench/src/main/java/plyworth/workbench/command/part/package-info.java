/**
 * What commands are made of: their arguments, their way to a ranking, and what they say when it
 * fails.
 */
package plyworth.workbench.command.part;
