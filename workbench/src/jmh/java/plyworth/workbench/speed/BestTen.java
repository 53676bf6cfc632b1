package plyworth.workbench.speed;

import java.util.Arrays;

/** The ten largest of many sums, by plain insertion. */
final class BestTen {

  private static final int K = 10;

  private BestTen() {}

  /** Their places, the largest first. */
  static int[] of(double[] sums) {
    double[] best = new double[K];
    int[] places = new int[K];
    Arrays.fill(best, Double.NEGATIVE_INFINITY);
    double least = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < sums.length; i++) {
      if (sums[i] > least) {
        int at = K - 1;
        while (at > 0 && best[at - 1] < sums[i]) {
          best[at] = best[at - 1];
          places[at] = places[at - 1];
          at--;
        }
        best[at] = sums[i];
        places[at] = i;
        least = best[K - 1];
      }
    }
    return places;
  }
}
