package plyworth.workbench.robustness;

import java.util.Arrays;

/**
 * Between what the weights of many draws lie, criterion by criterion.
 *
 * @param low the lowest weight of each criterion
 * @param high the highest
 */
record WeightSpan(double[] low, double[] high) {

  /** Room for the rounding of means of these weights. */
  private static final double ROUNDING = 1e-12;

  /** By so much another has to be ahead, level candidates and rounding allowed for. */
  private static final double AHEAD = 10 * Places.LEVEL;

  /** The span of some weights, and of all their means. */
  static WeightSpan of(double[][] weights) {
    double[] low = weights[0].clone();
    double[] high = weights[0].clone();
    for (double[] each : weights) {
      for (int c = 0; c < low.length; c++) {
        low[c] = Math.min(low[c], each[c]);
        high[c] = Math.max(high[c], each[c]);
      }
    }
    Arrays.setAll(low, c -> low[c] - ROUNDING);
    Arrays.setAll(high, c -> high[c] + ROUNDING);
    return new WeightSpan(low, high);
  }

  /**
   * The candidates that a leader does not leave behind under all weights of the span, itself among
   * them: one of these comes first, whatever the weights. None when nobody leads.
   */
  int[] rivals(World world, int leader) {
    int[] rivals = new int[world.ranked().length];
    int count = 0;
    double[] least = leader < 0 ? new double[0] : leastLead(world, leader);
    for (int i = 0; i < least.length; i++) {
      rivals[count] = i;
      count += world.ranked()[i] && (i == leader || least[i] <= AHEAD) ? 1 : 0;
    }
    return Arrays.copyOf(rivals, count);
  }

  /**
   * What the leader is ahead of each candidate at least: the better of two bounds. As weights add
   * up to 1, a lead is no less than the least difference in any criterion, and it is any figure t
   * plus the weighed differences from t; the mean difference is taken for t, which makes the least
   * of each criterion by itself a good bound where weights move little.
   */
  private double[] leastLead(World world, int leader) {
    double[] middle = middle();
    double[] lead = new double[world.ranked().length];
    for (int c = 0; c < middle.length; c++) {
      if (world.values()[c] != null) {
        addMean(middle[c], world.values()[c], leader, lead);
      }
    }
    double[] least = lead.clone();
    double[] corner = new double[lead.length];
    Arrays.fill(corner, Double.POSITIVE_INFINITY);
    for (int c = 0; c < middle.length; c++) {
      if (world.values()[c] != null) {
        addLeast(low[c], high[c], world.values()[c], leader, lead, least);
        lower(corner, world.values()[c], leader);
      }
    }
    Arrays.setAll(least, i -> Math.max(least[i], corner[i]));
    return least;
  }

  private double[] middle() {
    double[] middle = new double[low.length];
    Arrays.setAll(middle, c -> (low[c] + high[c]) / 2);
    double sum = Arrays.stream(middle).sum();
    Arrays.setAll(middle, c -> middle[c] / sum);
    return middle;
  }

  private static void addMean(double weight, double[] values, int leader, double[] lead) {
    double own = values[leader];
    for (int i = 0; i < lead.length; i++) {
      lead[i] += weight * (own - values[i]);
    }
  }

  private static void addLeast(
      double low, double high, double[] values, int leader, double[] lead, double[] least) {
    double own = values[leader];
    for (int i = 0; i < lead.length; i++) {
      double beyond = own - values[i] - lead[i];
      least[i] += Math.min(low * beyond, high * beyond);
    }
  }

  private static void lower(double[] corner, double[] values, int leader) {
    double own = values[leader];
    for (int i = 0; i < corner.length; i++) {
      corner[i] = Math.min(corner[i], own - values[i]);
    }
  }
}
