package plyworth.plugins.barrier.course;

import java.util.Optional;

/**
 * Losses of many packs of one brief, enclosed: in a constant climate by a {@link LossTable}, where
 * seasons change by the {@link ActivityExtremes}.
 */
public final class LossBounds {

  /** Of a loss below {@link #RESOLVED}, more than the table leaves open. */
  private static final double SLACK = 0.1;

  /** Where the table begins to round the corner at which all is gone, % of the charge. */
  private static final double RESOLVED = 40;

  private final VolatileBalance balance;
  private final Optional<LossTable> table;
  private final double perAlcohol;
  private final double perWater;
  private final boolean dries;
  private final double leastShare;
  private final double mostShare;

  private LossBounds(VolatileBalance balance, double days) {
    VolatileCourse course = balance.courses().get(0);
    this.balance = balance;
    this.table = balance.liquid().losses().map(LossTables::get);
    this.perAlcohol = days * course.activity() / balance.chargeG();
    this.perWater = days * course.saturatedPa() / balance.chargeG();
    this.dries = balance.dries();
    this.leastShare = share(balance.extremes().least(), days);
    this.mostShare = share(balance.extremes().most(), days);
  }

  /** Share of the charge that leaves per unit of conductance, at some rates by season. */
  private double share(double[] rates, double days) {
    double[] sum = new double[1];
    balance
        .seasons()
        .walk(
            days,
            (season, from, to) -> {
              sum[0] += (to - from) * rates[season] / balance.chargeG();
              return true;
            });
    return sum[0];
  }

  /** The bounds of a demand; empty when there is no volatile content or it is not known. */
  public static Optional<LossBounds> of(Demand demand) {
    return demand
        .alcohol()
        .filter(VolatileBalance::known)
        .map(balance -> new LossBounds(balance, demand.days()));
  }

  /**
   * Writes between what packs lose over the shelf life, % of the charge.
   *
   * @param alcohol conductances, g/day per unit of activity
   * @param waterLow least conductances to water, g/(day·Pa)
   * @param waterHigh largest conductances to water
   */
  public void enclose(
      double[] alcohol,
      double[] waterLow,
      double[] waterHigh,
      int many,
      double[] low,
      double[] high) {
    table.ifPresent(losses -> losses.place(waterLow, perWater, many, low));
    table.ifPresent(losses -> losses.place(waterHigh, perWater, many, high));
    for (int i = 0; i < many; i++) {
      if (table.isEmpty() || waterLow[i] != waterHigh[i] && !dries) {
        low[i] = lowest(alcohol[i]) + 0 * waterHigh[i];
        high[i] = highest(alcohol[i]) + 0 * waterHigh[i];
      } else {
        table.get().enclose(alcohol[i] * perAlcohol, low, high, i);
      }
    }
  }

  /** Least loss, %, of packs that conduct as much or more, whatever passes of water. */
  public double lowest(double alcohol) {
    double known = Math.min(RESOLVED, balance.content().allowedLossPercent());
    return (1 - SLACK) * Math.min(known, 100 * leastShare * alcohol);
  }

  /** Largest loss, %, of packs that conduct as much or less, whatever passes of water. */
  public double highest(double alcohol) {
    double most = 100 * mostShare * alcohol;
    return most > RESOLVED ? 100 : (1 + SLACK) * most;
  }
}
