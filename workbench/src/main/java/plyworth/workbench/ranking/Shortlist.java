package plyworth.workbench.ranking;

import java.util.Comparator;
import java.util.List;

/** The best few of many: higher value first, on equal values the lower path number. */
interface Shortlist {

  /** One of them. */
  record Entry(double value, long path) {}

  /** Best first. */
  Comparator<Entry> ORDER =
      Comparator.comparingDouble(Entry::value).reversed().thenComparingLong(Entry::path);

  /** Whether any candidate from {@code path} on with at most this value might be among them. */
  boolean admits(double value, long path);

  /** A value below which no candidate is among them; quicker to ask, and less exact. */
  double least();

  /** Whether this very candidate, worth at most this, might be among them; dearer to ask. */
  default boolean wants(double value, long path) {
    return admits(value, path);
  }

  /** Takes a candidate in if it is among them. */
  void offer(double value, long path);

  /** All of them, best first. */
  List<Entry> sorted();
}
