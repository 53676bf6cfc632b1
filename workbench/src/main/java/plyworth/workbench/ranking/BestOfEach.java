package plyworth.workbench.ranking;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongFunction;

/** The best candidate of each kind, of the best few kinds. */
final class BestOfEach implements Shortlist {

  private final int k;
  private final LongFunction<?> kind;
  private final Map<Object, Entry> byKind = new HashMap<>();
  private final TreeMap<Entry, Object> bestFirst = new TreeMap<>(ORDER);

  /**
   * None yet.
   *
   * @param k how many kinds, at least one
   * @param kind the kind of a path; kinds are compared by {@code equals}; null for a path that is
   *     not looked for
   */
  BestOfEach(int k, LongFunction<?> kind) {
    this.k = k;
    this.kind = kind;
  }

  @Override
  public boolean admits(double value, long path) {
    return byKind.size() < k || ORDER.compare(new Entry(value, path), bestFirst.lastKey()) < 0;
  }

  @Override
  public double least() {
    return byKind.size() < k ? Double.NEGATIVE_INFINITY : bestFirst.lastKey().value();
  }

  @Override
  public boolean wants(double value, long path) {
    return admits(value, path) && better(kind.apply(path), new Entry(value, path));
  }

  private boolean better(Object own, Entry entry) {
    Entry former = byKind.get(own);
    return own != null && (former == null || ORDER.compare(entry, former) < 0);
  }

  @Override
  public void offer(double value, long path) {
    if (!admits(value, path)) {
      return;
    }
    Entry entry = new Entry(value, path);
    Object own = kind.apply(path);
    if (!better(own, entry)) {
      return;
    }
    Entry former = byKind.put(own, entry);
    if (former != null) {
      bestFirst.remove(former);
    }
    bestFirst.put(entry, own);
    if (bestFirst.size() > k) {
      byKind.remove(bestFirst.pollLastEntry().getValue());
    }
  }

  @Override
  public List<Entry> sorted() {
    return List.copyOf(bestFirst.keySet());
  }
}
