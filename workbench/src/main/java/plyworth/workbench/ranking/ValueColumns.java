package plyworth.workbench.ranking;

import java.util.Arrays;
import java.util.List;

/** What some candidates, or runs of candidates at best, are worth by each criterion that counts. */
final class ValueColumns {

  /** Items summed up together, so that their sums stay near the processor. */
  private static final int BLOCK = 512;

  private static final double NEARLY_ALL = 0.75;

  private final double[][] values;
  private final long[] ids;

  /**
   * Columns.
   *
   * @param values criterion by item, 0 to 1
   * @param ids what the items are: path numbers, or numbers of zones
   */
  ValueColumns(double[][] values, long[] ids) {
    this.values = values;
    this.ids = ids;
  }

  int size() {
    return ids.length;
  }

  long id(int item) {
    return ids[item];
  }

  /** What each item is worth under some weights, added up in the order of the criteria. */
  double[] under(double[] weights) {
    double[] sums = new double[ids.length];
    for (int c = 0; c < weights.length; c++) {
      Weights.add(weights[c], values[c], sums);
    }
    return sums;
  }

  /**
   * Those that reach a floor under one of several weights; all where nearly all do, as leaving a
   * few out costs more than it saves.
   */
  ValueColumns reaching(double[][] weights, double[] floors) {
    int[] items = new int[ids.length];
    int count = 0;
    double[] most = new double[BLOCK];
    double[] beyond = new double[BLOCK];
    for (int from = 0; from < ids.length; from += BLOCK) {
      int size = Math.min(BLOCK, ids.length - from);
      Arrays.fill(most, Double.NEGATIVE_INFINITY);
      for (int i = 0; i < weights.length; i++) {
        Arrays.fill(beyond, -floors[i]);
        addTo(beyond, weights[i], from, size);
        raise(most, beyond);
      }
      for (int j = 0; j < size; j++) {
        items[count] = from + j;
        count += most[j] >= 0 ? 1 : 0;
      }
    }
    return count > NEARLY_ALL * ids.length ? this : only(Arrays.copyOf(items, count));
  }

  private void addTo(double[] sums, double[] weights, int from, int size) {
    for (int c = 0; c < weights.length; c++) {
      double weight = weights[c];
      double[] column = values[c];
      for (int j = 0; j < size; j++) {
        sums[j] += weight * column[from + j];
      }
    }
  }

  private static void raise(double[] most, double[] to) {
    for (int j = 0; j < most.length; j++) {
      most[j] = Math.max(most[j], to[j]);
    }
  }

  /** Some of them, in this order. */
  ValueColumns only(int[] items) {
    double[][] chosen = new double[values.length][items.length];
    long[] chosenIds = new long[items.length];
    for (int i = 0; i < items.length; i++) {
      chosenIds[i] = ids[items[i]];
    }
    for (int c = 0; c < values.length; c++) {
      for (int i = 0; i < items.length; i++) {
        chosen[c][i] = values[c][items[i]];
      }
    }
    return new ValueColumns(chosen, chosenIds);
  }

  /** The best {@code k} under some weights, or all where they are fewer. */
  ValueColumns best(int k, double[] weights) {
    double[] sums = under(weights);
    int[] best = new int[Math.min(k, sums.length)];
    int count = 0;
    for (int item = 0; item < sums.length; item++) {
      if (count < best.length || sums[item] > sums[best[count - 1]]) {
        count = Math.min(count + 1, best.length);
        int at = count - 1;
        while (at > 0 && sums[best[at - 1]] < sums[item]) {
          best[at] = best[at - 1];
          at--;
        }
        best[at] = item;
      }
    }
    return only(best);
  }

  /** Several, one after another. */
  static ValueColumns together(int criteria, List<ValueColumns> parts) {
    int size = parts.stream().mapToInt(ValueColumns::size).sum();
    double[][] values = new double[criteria][size];
    long[] ids = new long[size];
    int at = 0;
    for (ValueColumns part : parts) {
      for (int c = 0; c < criteria; c++) {
        System.arraycopy(part.values[c], 0, values[c], at, part.size());
      }
      System.arraycopy(part.ids, 0, ids, at, part.size());
      at += part.size();
    }
    return new ValueColumns(values, ids);
  }
}
