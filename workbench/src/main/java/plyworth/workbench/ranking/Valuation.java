package plyworth.workbench.ranking;

import java.util.List;

/**
 * What a candidate is worth and why.
 *
 * @param value Σ weight · value, everything unknown at its worst: the value it is ranked by
 * @param valueHigh the same with everything unknown at its best
 * @param parts one for each criterion, in the order of the value model
 */
public record Valuation(double value, double valueHigh, List<Part> parts) {

  /** Copies the list. */
  public Valuation {
    parts = List.copyOf(parts);
  }

  /**
   * The part of one criterion.
   *
   * @param low the figure, or its lower end; NaN when unknown or not applicable
   * @param high the figure, or its upper end
   * @param valueLow its value, or the lowest of its bounds; 0 when unknown
   * @param valueHigh its value, or the highest of its bounds; 1 when unknown
   * @param contribution weight times {@link #valueLow}
   * @param contributionHigh weight times {@link #valueHigh}
   */
  public record Part(
      double low,
      double high,
      double valueLow,
      double valueHigh,
      double contribution,
      double contributionHigh) {

    /** The part of a criterion with a figure between two ends. */
    static Part of(double weight, ValueCurve curve, double low, double high) {
      if (Double.isNaN(low) || Double.isNaN(high)) {
        return new Part(Double.NaN, Double.NaN, 0, 1, 0, weight);
      }
      double worst = curve.lowest(low, high);
      double best = curve.highest(low, high);
      return new Part(low, high, worst, best, weight * worst, weight * best);
    }

    /** Whether the figure is known. */
    public boolean known() {
      return !Double.isNaN(low);
    }
  }

  /** Adds parts up in order. */
  static Valuation of(List<Part> parts) {
    double value = 0;
    double valueHigh = 0;
    for (Part part : parts) {
      value += part.contribution();
      valueHigh += part.contributionHigh();
    }
    return new Valuation(value, valueHigh, parts);
  }
}
