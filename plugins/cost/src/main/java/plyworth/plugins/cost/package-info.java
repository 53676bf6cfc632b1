/**
 * Cost: grammage and yield, compound waste through the passes of the route, materials, machine
 * hours, tools, freight, the price of the film and the cost of a good pack.
 *
 * <p>One order of the brief is calculated as a converter does it: the area that must leave slitting
 * is led backwards through the passes, every material is bought at the area that enters its pass,
 * and every pass is paid by its hours.
 */
package plyworth.plugins.cost;
