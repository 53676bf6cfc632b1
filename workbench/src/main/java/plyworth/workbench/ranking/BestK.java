package plyworth.workbench.ranking;

import java.util.List;
import java.util.PriorityQueue;

/** The best few of many, whatever they are. */
final class BestK implements Shortlist {

  private final int k;
  private final PriorityQueue<Entry> worstFirst = new PriorityQueue<>(ORDER.reversed());
  private double threshold = Double.NEGATIVE_INFINITY;

  BestK(int k) {
    this.k = k;
    threshold = k > 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }

  @Override
  public boolean admits(double value, long path) {
    if (value != threshold || worstFirst.size() < k) {
      return value > threshold;
    }
    return path < worstFirst.peek().path();
  }

  @Override
  public double least() {
    return threshold;
  }

  @Override
  public void offer(double value, long path) {
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

  @Override
  public List<Entry> sorted() {
    return worstFirst.stream().sorted(ORDER).toList();
  }
}
