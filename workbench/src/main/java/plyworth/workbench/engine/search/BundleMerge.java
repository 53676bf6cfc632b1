package plyworth.workbench.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import plyworth.shared.scoring.Join;
import plyworth.workbench.engine.table.StateLayout;

/** Merges neighbouring bundles, those first that together stay narrow. */
final class BundleMerge {

  private final StateLayout layout;
  private final int most;

  BundleMerge(StateLayout layout, int most) {
    this.layout = layout;
    this.most = most;
  }

  /** A bundle in a chain of them. */
  private static final class Link {
    private StateSpan span;
    private Link before;
    private Link after;
    private boolean gone;

    Link(StateSpan span) {
      this.span = span;
    }
  }

  /** Two links that follow each other, and how wide they are together. */
  private record Pair(Link first, Link second, StateSpan together, double width) {
    boolean stale() {
      return first.gone || second.gone;
    }
  }

  /** At most as many bundles as are allowed, in order. */
  List<StateSpan> merged(List<StateSpan> bundles) {
    if (bundles.size() <= most) {
      return bundles;
    }
    StateSpan whole = bundles.get(0);
    for (StateSpan bundle : bundles) {
      whole = whole.with(bundle, layout);
    }
    return new Chain(bundles, whole).shortened();
  }

  private final class Chain {
    private final StateSpan whole;
    private final PriorityQueue<Pair> narrowest =
        new PriorityQueue<>(Comparator.comparingDouble(Pair::width));
    private Link first;
    private int length;

    Chain(List<StateSpan> bundles, StateSpan whole) {
      this.whole = whole;
      length = bundles.size();
      first = new Link(bundles.get(0));
      Link last = first;
      for (StateSpan bundle : bundles.subList(1, length)) {
        Link next = new Link(bundle);
        next.before = last;
        last.after = next;
        offer(last);
        last = next;
      }
    }

    private void offer(Link link) {
      if (link != null && link.after != null) {
        StateSpan together = link.span.with(link.after.span, layout);
        narrowest.add(new Pair(link, link.after, together, width(together)));
      }
    }

    List<StateSpan> shortened() {
      while (length > most) {
        Pair pair = narrowest.poll();
        if (!pair.stale()) {
          merge(pair);
        }
      }
      List<StateSpan> left = new ArrayList<>();
      for (Link link = first; link != null; link = link.after) {
        left.add(link.span);
      }
      return left;
    }

    private void merge(Pair pair) {
      Link merged = new Link(pair.together());
      merged.before = pair.first().before;
      merged.after = pair.second().after;
      pair.first().gone = true;
      pair.second().gone = true;
      if (merged.before == null) {
        first = merged;
      } else {
        merged.before.after = merged;
      }
      if (merged.after != null) {
        merged.after.before = merged;
      }
      length--;
      offer(merged.before);
      offer(merged);
    }

    /** The sum over the parts of the share of the whole that a span takes. */
    private double width(StateSpan span) {
      double sum = 0;
      for (int part = 0; part < layout.parts(); part++) {
        double widest = 0;
        for (int c = layout.offset(part); c < layout.offset(part) + size(part); c++) {
          widest = Math.max(widest, share(part, c, span));
        }
        sum += widest;
      }
      return sum;
    }

    private int size(int part) {
      return layout.join(part).size();
    }

    private double share(int part, int c, StateSpan span) {
      double low = span.low()[c];
      double high = span.high()[c];
      if (low == high) {
        return 0;
      }
      double least = whole.low()[c];
      double greatest = whole.high()[c];
      if (layout.join(part) == Join.BITS || !Double.isFinite(greatest - least)) {
        return 1;
      }
      return least > 0
          ? Math.log(high / low) / Math.log(greatest / least)
          : (high - low) / (greatest - least);
    }
  }
}
