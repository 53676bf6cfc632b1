/**
 * How a study travels: prepared, compiled, scored, ranked; one pure step each. Changing a weight
 * goes back to the last step only.
 */
package plyworth.workbench.analysis;
