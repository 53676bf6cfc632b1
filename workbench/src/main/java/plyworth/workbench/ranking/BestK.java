package plyworth.workbench.ranking;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** The best few of many: higher value first, on equal values the lower path number. */
final class BestK {

  /** One of them. */
  record Entry(double value, long path) {}

  /** Best first. */
  static final Comparator<Entry> ORDER =
      Comparator.comparingDouble(Entry::value).reversed().thenComparingLong(Entry::path);

  private final int k;
  private final PriorityQueue<Entry> worstFirst = new PriorityQueue<>(ORDER.reversed());
  private double threshold = Double.NEGATIVE_INFINITY;

  BestK(int k) {
    this.k = k;
    threshold = k > 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }

  /** Whether a candidate would be among them; for a bound: whether one from that path on might. */
  boolean admits(double value, long path) {
    if (value != threshold || worstFirst.size() < k) {
      return value > threshold;
    }
    return path < worstFirst.peek().path();
  }

  /** Takes a candidate in if it is among them. */
  void offer(double value, long path) {
    if (!admits(value, path)) {
      return;
    }
    worstFirst.add(new Entry(value, path));
    if (worstFirst.size() > k) {
      worstFirst.poll();
    }
    if (worstFirst.size() == k) {
      threshold = worstFirst.peek().value();
    }
  }

  /** All of them, best first. */
  List<Entry> sorted() {
    return worstFirst.stream().sorted(ORDER).toList();
  }
}
