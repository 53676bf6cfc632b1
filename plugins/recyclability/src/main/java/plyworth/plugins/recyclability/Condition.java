package plyworth.plugins.recyclability;

import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;

/**
 * One comparison of a rule: a measure against a limit.
 *
 * <p>Limits are met within {@value #TOLERANCE}, so that 60/75 is "at least 80 %".
 *
 * @param at ordinal of the measure that is compared: read for every candidate, so without a detour
 * @param sign 1 when large figures satisfy it, −1 when small ones do
 * @param threshold satisfied when {@code sign × figure ≥ threshold}
 */
record Condition(int at, double sign, double threshold) {

  /** How far a limit may be missed and still counts as met. */
  static final double TOLERANCE = 1e-9;

  /** Reads {@code { "of": measure, "at-least" | "above" | "at-most" | "below": limit }}. */
  static Condition read(Fields fields) {
    int measure = fields.choice("of", Measure.class).ordinal();
    if (fields.has("at-least")) {
      return new Condition(measure, 1, fields.number("at-least") - TOLERANCE);
    }
    if (fields.has("above")) {
      return new Condition(measure, 1, Math.nextUp(fields.number("above") + TOLERANCE));
    }
    if (fields.has("at-most")) {
      return new Condition(measure, -1, -fields.number("at-most") - TOLERANCE);
    }
    if (fields.has("below")) {
      return new Condition(measure, -1, Math.nextUp(TOLERANCE - fields.number("below")));
    }
    throw new DataException(
        fields.place(),
        "the condition has no limit",
        "Write \"at-least\", \"above\", \"at-most\" or \"below\".");
  }

  /** What is compared. */
  Measure measure() {
    return Measure.values()[at];
  }

  /** Whether the figures satisfy it; never when the figure is unknown. */
  boolean holds(double[] figures) {
    return sign * figures[at] >= threshold;
  }

  /** Whether the figure it needs is unknown. */
  boolean open(double[] figures) {
    return Double.isNaN(figures[at]);
  }

  /** Whether every figure between the bounds satisfies it. */
  boolean must(double[] low, double[] high) {
    return holds(sign > 0 ? low : high);
  }

  /** Whether some figure between the bounds satisfies it. */
  boolean may(double[] low, double[] high) {
    return holds(sign > 0 ? high : low);
  }
}
