/**
 * How things are printed: paragraphs, columns, and what is said of criteria, findings and weights.
 */
package plyworth.workbench.command.print;
