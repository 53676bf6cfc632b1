package plyworth.workbench.robustness;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Estimates which share of the variance of a figure comes from each input, out of a figure at
 * points A, at points B, and at the points of A with one coordinate from B (first order: Saltelli
 * and others, Computer Physics Communications 181, 2010; total: Jansen, Computer Physics
 * Communications 117, 1999; both from memory).
 *
 * @param a figure at the points A
 * @param b figure at the points B
 * @param mixed by input: figure at the points A, that input from B
 */
record VarianceShares(double[] a, double[] b, double[][] mixed) {

  /**
   * First-order and total indices.
   *
   * @param first by input: the share of the variance that the input explains alone, mean of f(B)
   *     (f(AB) − f(A)) over the variance; NaN where nothing varies
   * @param total by input: the share that is left when all others are known, mean of (f(A) −
   *     f(AB))² over twice the variance
   */
  record Indices(double[] first, double[] total) {}

  /** Every point once. */
  int[] points() {
    return IntStream.range(0, a.length).toArray();
  }

  /** Mean of the figure over some points of A and of B. */
  double mean(int[] points) {
    return Arrays.stream(points).mapToDouble(p -> (a[p] + b[p]) / 2).average().orElse(Double.NaN);
  }

  /** Variance of the figure over some points of A and of B. */
  double variance(int[] points) {
    double mean = mean(points);
    return Arrays.stream(points)
        .mapToDouble(p -> (square(a[p] - mean) + square(b[p] - mean)) / 2)
        .average()
        .orElse(Double.NaN);
  }

  /** The indices from some of the points, which may repeat. */
  Indices of(int[] points) {
    double mean = mean(points);
    double variance = variance(points);
    double[] first = new double[mixed.length];
    double[] total = new double[mixed.length];
    for (int i = 0; i < mixed.length; i++) {
      for (int p : points) {
        first[i] += (b[p] - mean) * (mixed[i][p] - a[p]);
        total[i] += square(a[p] - mixed[i][p]) / 2;
      }
      first[i] = share(first[i] / points.length, variance);
      total[i] = share(total[i] / points.length, variance);
    }
    return new Indices(first, total);
  }

  private static double share(double part, double variance) {
    return variance > 0 ? part / variance : Double.NaN;
  }

  private static double square(double x) {
    return x * x;
  }
}
