package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The best few of many, whatever they are: a heap of numbers, the worst of them on top. */
final class BestK implements Shortlist {

  private final int k;
  private double[] values = new double[16];
  private long[] paths = new long[16];
  private int size;

  BestK(int k) {
    this.k = k;
  }

  @Override
  public boolean admits(double value, long path) {
    return size < k || k > 0 && isWorse(values[0], paths[0], value, path);
  }

  @Override
  public double least() {
    if (k == 0) {
      return Double.POSITIVE_INFINITY;
    }
    return size < k ? Double.NEGATIVE_INFINITY : values[0];
  }

  @Override
  public void offer(double value, long path) {
    if (size < k) {
      makeRoom();
      sinkIn(size++, value, path);
    } else if (admits(value, path)) {
      replaceWorst(value, path);
    }
  }

  private void makeRoom() {
    if (size == values.length) {
      values = Arrays.copyOf(values, 2 * size);
      paths = Arrays.copyOf(paths, 2 * size);
    }
  }

  /** Puts one in at a free place, moving down whatever is better on the way to the top. */
  private void sinkIn(int free, double value, long path) {
    int at = free;
    while (at > 0 && isWorse(value, path, values[(at - 1) / 2], paths[(at - 1) / 2])) {
      move((at - 1) / 2, at);
      at = (at - 1) / 2;
    }
    put(at, value, path);
  }

  private void replaceWorst(double value, long path) {
    int at = 0;
    int worse = worseBelow(at);
    while (worse > 0 && isWorse(values[worse], paths[worse], value, path)) {
      move(worse, at);
      at = worse;
      worse = worseBelow(at);
    }
    put(at, value, path);
  }

  /** The worse of the two below a place, 0 where there is none. */
  private int worseBelow(int at) {
    int left = 2 * at + 1;
    int right = left + 1;
    if (left >= size) {
      return 0;
    }
    return right < size && isWorse(values[right], paths[right], values[left], paths[left])
        ? right
        : left;
  }

  private void move(int from, int to) {
    put(to, values[from], paths[from]);
  }

  private void put(int at, double value, long path) {
    values[at] = value;
    paths[at] = path;
  }

  private static boolean isWorse(double value, long path, double than, long thanPath) {
    return value < than || value == than && path > thanPath;
  }

  @Override
  public List<Entry> sorted() {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      entries.add(new Entry(values[i], paths[i]));
    }
    entries.sort(ORDER);
    return entries;
  }
}
