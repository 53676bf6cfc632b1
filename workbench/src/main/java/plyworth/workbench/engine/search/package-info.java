/**
 * Exact search without a table: the best candidates of a graph that is too large to be scored as a
 * whole, by branch and bound.
 *
 * <p>A prefix, the outer layers of some candidates, is bounded by what its completions can still
 * add ({@link plyworth.workbench.engine.search.Bundles}, by dynamic programming from the inside
 * out) and by what plugins make of such intervals ({@link
 * plyworth.shared.scoring.Layerwise#bound}); criteria that add up are bounded together, as one sum
 * along the edges ({@link plyworth.workbench.engine.search.SumBound}). The most promising prefix is
 * opened first (A*, Hart, Nilsson and Raphael 1968; from memory); one with few completions is
 * scored as in a table, figure by figure the same. What is found is therefore what a table would
 * show.
 */
package plyworth.workbench.engine.search;
