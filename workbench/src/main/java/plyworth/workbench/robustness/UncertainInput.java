package plyworth.workbench.robustness;

import plyworth.shared.quantity.Range;

/**
 * An input that is uncertain.
 *
 * @param id name under which plugins draw it, for example {@code ldpe/o2-permeability}
 * @param range what it may be, where it is read first
 * @param tabulated whether it is read at several places of a table, such as two gauges
 */
public record UncertainInput(String id, Range range, boolean tabulated) {}
