/**
 * Plant and supply: who runs each pass of a route, which bought web stands for each layer, when all
 * of it is there, and what of the minimum orders is left over.
 *
 * <p>A job stays on one machine or service for each process: whatever face or web is run, the same
 * one must take it. That is how jobs are planned, and it makes the judgement exact layer by layer.
 */
package plyworth.plugins.supply;
