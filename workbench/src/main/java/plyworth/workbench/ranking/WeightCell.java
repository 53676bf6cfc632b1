package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A simplex of weights with the samples that lie in it. A candidate that is worth less than another
 * at every corner is worth less under every sample, as values are linear in weights.
 *
 * @param corners weights, as many as there are criteria
 * @param samples never none
 */
record WeightCell(double[][] corners, List<Sample> samples) {

  /** Below this part of itself a cell isn't divided any more: its samples are all the same. */
  private static final double POINT = 1e-9;

  /**
   * A sample.
   *
   * @param weights one for each criterion; they add up to 1
   * @param place its share of each corner: barycentric coordinates
   */
  record Sample(double[] weights, double[] place) {}

  /** The smallest simplex of all directions alike that holds some weights. */
  static WeightCell around(double[][] weights) {
    int criteria = weights[0].length;
    double[][] corners = new double[criteria][criteria];
    for (int c = 0; c < criteria; c++) {
      corners[c][c] = 1;
    }
    List<Sample> samples = Arrays.stream(weights).map(w -> new Sample(w, w)).toList();
    return new WeightCell(corners, samples).shrunk();
  }

  /** The mean of the samples. */
  double[] mean() {
    double[] mean = new double[corners.length];
    for (Sample sample : samples) {
      Weights.add(1.0 / samples.size(), sample.weights(), mean);
    }
    return mean;
  }

  /** Whether the samples differ. */
  boolean divisible() {
    return longestEdge().length > 0;
  }

  /** The two halves of a cell through its longest edge, or the one with all the samples. */
  List<WeightCell> halves() {
    int[] edge = longestEdge();
    List<WeightCell> halves = new ArrayList<>();
    half(edge[0], edge[1], true).ifSampled(halves);
    half(edge[1], edge[0], false).ifSampled(halves);
    return halves;
  }

  private void ifSampled(List<WeightCell> cells) {
    if (!samples.isEmpty()) {
      cells.add(shrunk());
    }
  }

  private int[] longestEdge() {
    int[] longest = {};
    double most = POINT * POINT;
    for (int a = 0; a < corners.length; a++) {
      for (int b = a + 1; b < corners.length; b++) {
        double square = squareBetween(corners[a], corners[b]);
        if (square > most) {
          most = square;
          longest = new int[] {a, b};
        }
      }
    }
    return longest;
  }

  private static double squareBetween(double[] a, double[] b) {
    double square = 0;
    for (int c = 0; c < a.length; c++) {
      square += (a[c] - b[c]) * (a[c] - b[c]);
    }
    return square;
  }

  /** The half at corner {@code near}; what lies in the middle belongs to one of the two. */
  private WeightCell half(int near, int far, boolean middle) {
    double[][] halved = corners.clone();
    halved[far] = new double[corners.length];
    Weights.add(0.5, corners[near], halved[far]);
    Weights.add(0.5, corners[far], halved[far]);
    List<Sample> own = new ArrayList<>();
    for (Sample sample : samples) {
      double nearer = sample.place()[near] - sample.place()[far];
      if (nearer > 0 || nearer == 0 && middle) {
        double[] place = sample.place().clone();
        place[near] = nearer;
        place[far] *= 2;
        own.add(new Sample(sample.weights(), place));
      }
    }
    return new WeightCell(halved, own);
  }

  /** The same shape, moved and shrunk until every side touches a sample. */
  private WeightCell shrunk() {
    double[] least = samples.get(0).place().clone();
    for (Sample sample : samples) {
      for (int i = 0; i < least.length; i++) {
        least[i] = Math.min(least[i], sample.place()[i]);
      }
    }
    double scale = 1 - Arrays.stream(least).sum();
    if (scale < POINT) {
      return this;
    }
    return new WeightCell(
        shrunk(least, scale), samples.stream().map(s -> shrunk(s, least, scale)).toList());
  }

  private double[][] shrunk(double[] least, double scale) {
    double[][] shrunk = new double[corners.length][corners.length];
    for (int i = 0; i < shrunk.length; i++) {
      for (int j = 0; j < shrunk.length; j++) {
        Weights.add(least[j] + (i == j ? scale : 0), corners[j], shrunk[i]);
      }
    }
    return shrunk;
  }

  private static Sample shrunk(Sample sample, double[] least, double scale) {
    double[] place = new double[least.length];
    for (int i = 0; i < place.length; i++) {
      place[i] = (sample.place()[i] - least[i]) / scale;
    }
    return new Sample(sample.weights(), place);
  }
}
