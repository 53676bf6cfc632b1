/**
 * What candidates are worth: the additive value model, the groups that blocks and limits make, the
 * best candidates and the Pareto front of a table.
 *
 * <p>The value of a candidate is Σ weight · value over the criteria (additive value model, Keeney
 * and Raiffa, Decisions with Multiple Objectives, 1976; from memory). Reference points are fixed,
 * so no candidate that comes or goes changes the value of another. A figure that is unknown may be
 * worth anything from 0 to 1; candidates are ranked by the lower end.
 */
package plyworth.workbench.ranking;
