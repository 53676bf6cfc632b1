/** The command that ranks, and what it prints. */
package plyworth.workbench.command.ranking;
