package plyworth.workbench.engine.search;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import plyworth.shared.scoring.Join;
import plyworth.workbench.engine.table.Contributions;
import plyworth.workbench.engine.table.StateLayout;

/**
 * Between which states lies what layers add whose amounts, and those of their outer neighbours, lie
 * within a range.
 */
final class Hulls {

  private static final long MOST_BYTES = 64L << 20;

  private record Place(int edge, int outerFrom, int outerTo, int innerFrom, int innerTo) {}

  private final Kinds kinds;
  private final Contributions contributions;
  private final int[] sets;
  private final Map<Place, StateSpan> byPlace = new ConcurrentHashMap<>();
  private final long most;

  Hulls(Kinds kinds, Contributions contributions, StateLayout layout) {
    this.kinds = kinds;
    this.contributions = contributions;
    sets =
        IntStream.range(0, layout.parts())
            .filter(part -> layout.join(part) == Join.BITS)
            .map(layout::offset)
            .toArray();
    most = MOST_BYTES / (2L * Double.BYTES * Math.max(1, layout.size()));
  }

  /** What enclosed members add behind enclosed members; kept as long as there is room. */
  StateSpan of(Kinds.Edge edge, Range outer, Range inner) {
    if (outer.size() == 1 && inner.size() == 1) {
      return StateSpan.point(contributions.of(kinds.edge(edge, outer.from(), inner.from())));
    }
    Place place = new Place(edge.id(), outer.from(), outer.to(), inner.from(), inner.to());
    StateSpan hull = byPlace.get(place);
    if (hull == null) {
      hull = gathered(edge, outer, inner);
      if (byPlace.size() < most) {
        byPlace.put(place, hull);
      }
    }
    return hull;
  }

  private StateSpan gathered(Kinds.Edge edge, Range outer, Range inner) {
    double[] first = contributions.of(kinds.edge(edge, outer.from(), inner.from()));
    double[] low = first.clone();
    double[] high = first.clone();
    double[] setLow = first.clone();
    double[] setHigh = first.clone();
    for (int o = outer.from(); o < outer.to(); o++) {
      for (int i = inner.from(); i < inner.to(); i++) {
        double[] state = contributions.of(kinds.edge(edge, o, i));
        widen(low, high, state);
        for (int at : sets) {
          Join.BITS.hull(setLow, setHigh, state, state, at);
        }
      }
    }
    for (int at : sets) {
      low[at] = setLow[at];
      high[at] = setHigh[at];
    }
    return new StateSpan(low, high);
  }

  /** The hull of all components but sets, as one plain loop; sets are united by themselves. */
  private static void widen(double[] low, double[] high, double[] state) {
    for (int k = 0; k < state.length; k++) {
      low[k] = Math.min(low[k], state[k]);
      high[k] = Math.max(high[k], state[k]);
    }
  }
}
