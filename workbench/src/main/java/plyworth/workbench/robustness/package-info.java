/**
 * How far a ranking can be trusted: how much a weight may move before another candidate leads, what
 * the stakeholders make of each other's choices, how often a candidate comes first while weights
 * and inputs are uncertain, and which inputs make a figure uncertain.
 *
 * <p>Pure functions over a ranked study. What is said of all candidates is proved for all of them
 * by the ranking itself, which passes over runs of candidates only where their largest figures show
 * that none of them matters.
 */
package plyworth.workbench.robustness;
