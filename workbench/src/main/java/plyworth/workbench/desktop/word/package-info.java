/**
 * The words of the window: its texts in the language in force, and what materials, processes,
 * criteria and figures are called in it.
 */
package plyworth.workbench.desktop.word;
