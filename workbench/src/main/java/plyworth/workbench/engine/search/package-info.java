/**
 * Exact search without a table: the best candidates of a graph that is too large to be scored as a
 * whole, by branch and bound.
 *
 * <p>Layers that differ in their amount alone are one kind ({@link
 * plyworth.workbench.engine.search.Kinds}), and the candidates fall into regions: first by the
 * kinds of their layers, from the outside in, then by ranges of their amounts ({@link
 * plyworth.workbench.engine.search.Regions}). A region is bounded by the intervals that its states
 * lie in, those of what still follows by dynamic programming from the inside out ({@link
 * plyworth.workbench.engine.search.Bundles}), and by what plugins make of such intervals ({@link
 * plyworth.shared.scoring.Layerwise#bound}); criteria that add up are bounded together, as one sum
 * along the edges ({@link plyworth.workbench.engine.search.SumBound}). The most promising region is
 * opened first (A*, Hart, Nilsson and Raphael 1968; from memory); one of few candidates is scored
 * as in a table, figure by figure the same. What is found is therefore what a table would show.
 */
package plyworth.workbench.engine.search;
