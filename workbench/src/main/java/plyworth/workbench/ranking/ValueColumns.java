package plyworth.workbench.ranking;

import java.util.Arrays;
import java.util.List;

/** What some candidates, or runs of candidates at best, are worth by each criterion that counts. */
final class ValueColumns {

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

  /** Those that reach a floor under one of several weights. */
  ValueColumns reaching(double[][] weights, double[] floors) {
    boolean[] reaches = new boolean[ids.length];
    for (int i = 0; i < weights.length; i++) {
      double[] sums = under(weights[i]);
      for (int item = 0; item < sums.length; item++) {
        reaches[item] |= sums[item] >= floors[i];
      }
    }
    return only(reaches);
  }

  private ValueColumns only(boolean[] wanted) {
    int[] items = new int[ids.length];
    int count = 0;
    for (int item = 0; item < wanted.length; item++) {
      items[count] = item;
      count += wanted[item] ? 1 : 0;
    }
    return only(Arrays.copyOf(items, count));
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
    BestK best = new BestK(k);
    for (int item = 0; item < sums.length; item++) {
      best.offer(sums[item], item);
    }
    return only(best.sorted().stream().mapToInt(entry -> (int) entry.path()).toArray());
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
