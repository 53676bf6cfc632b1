package plyworth.workbench.engine.search;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
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
  private final StateLayout layout;
  private final Map<Place, StateSpan> byPlace = new ConcurrentHashMap<>();
  private final long most;

  Hulls(Kinds kinds, Contributions contributions, StateLayout layout) {
    this.kinds = kinds;
    this.contributions = contributions;
    this.layout = layout;
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
    double[] low = contributions.of(kinds.edge(edge, outer.from(), inner.from())).clone();
    double[] high = low.clone();
    for (int o = outer.from(); o < outer.to(); o++) {
      for (int i = inner.from(); i < inner.to(); i++) {
        double[] state = contributions.of(kinds.edge(edge, o, i));
        for (int part = 0; part < layout.parts(); part++) {
          Join join = layout.join(part);
          join.hull(low, high, state, state, layout.offset(part));
        }
      }
    }
    return new StateSpan(low, high);
  }
}
