package plyworth.workbench.engine.search;

/**
 * A straight line that what a figure is worth never exceeds.
 *
 * @param slope worth per unit of the figure
 * @param atZero the worth that the line has at the figure 0
 * @param exact whether the worth lies on the line, but for rounding
 */
public record Line(double slope, double atZero, boolean exact) {}
