package plyworth.plugins.barrier.course;

import plyworth.plugins.barrier.climate.Seasons;

/**
 * Two monotone functions of one conductance that enclose the day on which a product has gone its
 * whole way, through seasons in which the pack conducts more or less.
 *
 * <p>The way is cut into pieces. Along each, exposure builds up per day at no more than its most
 * and no less than its least; whoever begins a piece no later, and goes it no slower, ends it no
 * later (comparison of scalar differential equations; analytic).
 *
 * @param seasons the climate
 * @param pieces exposure of each piece: days times conductance times force
 * @param most most exposure per day and unit of conductance, by piece and season
 * @param least the least; empty when the product may move back, so that no last day can be given
 */
record Enclosure(Seasons seasons, double[] pieces, double[][] most, double[][] least) {

  /** An exact one, for a constant climate: days times conductance are an allowance. */
  static Enclosure constant(Seasons seasons, double allowance) {
    double[][] rate = {{1}};
    return new Enclosure(seasons, new double[] {allowance}, rate, rate);
  }

  /** The fewest days, for a conductance at the storage climate. */
  double atLeast(double conductance) {
    return days(conductance, most);
  }

  /** The most days. */
  double atMost(double conductance) {
    if (least.length == 0) {
      return Double.isNaN(conductance) ? Double.NaN : Double.POSITIVE_INFINITY;
    }
    return days(conductance, least);
  }

  /** Days times conductance, above 0, where that is constant; NaN elsewhere. */
  double allowance() {
    return constant() && pieces[0] > 0 ? pieces[0] : Double.NaN;
  }

  private boolean constant() {
    return pieces.length == 1 && most[0].length == 1;
  }

  private double days(double conductance, double[][] rates) {
    if (constant()) {
      return pieces[0] == 0 ? 0 : pieces[0] / conductance;
    }
    double day = 0;
    for (int i = 0; i < pieces.length; i++) {
      day = seasons.until(day, rates[i], pieces[i] / conductance);
    }
    return day;
  }
}
