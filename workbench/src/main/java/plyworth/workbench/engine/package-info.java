/**
 * The candidates of a study in the flat form that the search works on, and why a structure is not
 * among them.
 */
package plyworth.workbench.engine;
