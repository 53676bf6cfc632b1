package plyworth.workbench.ranking;

/**
 * A candidate among the best.
 *
 * @param path its number
 * @param valuation what it is worth; figures have the seven digits of the table, or all when they
 *     were refined
 */
public record RankedCandidate(long path, Valuation valuation) {

  /** The value it is ranked by. */
  public double value() {
    return valuation.value();
  }

  /** Its value with everything unknown at its best. */
  public double valueHigh() {
    return valuation.valueHigh();
  }
}
