package plyworth.workbench.robustness;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Draws weights around a weighting. Criteria without weight stay without; the rest add up to 1.
 *
 * @param weights the weighting, one share for each criterion
 * @param doubt what is taken to be known of the weights
 */
record WeightSampler(double[] weights, Doubt doubt) {

  /**
   * How close weights drawn around a weighting stay to it: a share w has the standard deviation √(w
   * (1 − w) / (1 + this)).
   */
  static final double CONCENTRATION = 50;

  /** A draw. */
  double[] draw(SplittableRandom random) {
    double[] drawn = new double[weights.length];
    for (int c = 0; c < drawn.length; c++) {
      drawn[c] = weights[c] > 0 ? amount(weights[c], random) : 0;
    }
    double sum = Arrays.stream(drawn).sum();
    for (int c = 0; c < drawn.length; c++) {
      drawn[c] /= sum;
    }
    return doubt == Doubt.ORDER ? inOrder(drawn) : drawn;
  }

  /** Exponentials over their sum are uniform on the simplex; gammas follow Dirichlet. */
  private double amount(double weight, SplittableRandom random) {
    return switch (doubt) {
      case EXACT -> weight;
      case AROUND -> gamma(CONCENTRATION * weight, random);
      case ORDER, ANY -> random.nextExponential();
    };
  }

  /** The largest share goes where the weighting has its largest; equal weights in random order. */
  private double[] inOrder(double[] drawn) {
    int[] places =
        IntStream.range(0, drawn.length)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer c) -> weights[c])
                    .thenComparingDouble(c -> drawn[c]))
            .mapToInt(c -> c)
            .toArray();
    double[] ascending = drawn.clone();
    Arrays.sort(ascending);
    double[] ordered = new double[drawn.length];
    for (int i = 0; i < places.length; i++) {
      ordered[places[i]] = ascending[i];
    }
    return ordered;
  }

  /** The gamma distribution of scale 1: Marsaglia and Tsang, 2000; from memory. */
  private static double gamma(double shape, SplittableRandom random) {
    if (shape < 1) {
      return gamma(shape + 1, random) * Math.pow(1 - random.nextDouble(), 1 / shape);
    }
    double d = shape - 1.0 / 3;
    while (true) {
      double x = random.nextGaussian();
      double v = Math.pow(1 + x / Math.sqrt(9 * d), 3);
      double u = 1 - random.nextDouble();
      if (v > 0 && Math.log(u) < x * x / 2 + d * (1 - v + Math.log(v))) {
        return d * v;
      }
    }
  }
}
