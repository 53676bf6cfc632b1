package plyworth.workbench.robustness;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Limit;
import plyworth.workbench.engine.table.ListedFigures;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.ranking.ValueCurve;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * What figures of a world are worth. Where layers only enclose a figure, the middle counts if the
 * values at its ends differ by {@link #NARROW} at most and no limit lies between them; otherwise
 * the structure is scored in full.
 */
final class WorldValues {

  /** Values this close are told apart by nobody; their middle is off by half of it at most. */
  static final double NARROW = 1e-4;

  private final ValueModel model;
  private final List<Structure> structures;
  private final ListedFigures steady;
  private final Map<String, double[]> exact = new HashMap<>();
  private final ValueCurve[] curves;
  private final double[][] known;

  /**
   * The values.
   *
   * @param structures the listed structures
   * @param bound the plugins that say the same in every world
   * @param steady what they say
   */
  WorldValues(
      ValueModel model, List<Structure> structures, BoundPlugins bound, ListedFigures steady) {
    this.model = model;
    this.structures = structures;
    this.steady = steady;
    for (int c = 0; c < bound.criteria().size(); c++) {
      if (steady.low(c) != null) {
        exact.put(bound.criteria().get(c).id(), exact(bound, c));
      }
    }
    List<Weighed> criteria = model.criteria();
    curves = new ValueCurve[criteria.size()];
    known = new double[curves.length][];
    for (int c = 0; c < curves.length; c++) {
      double[] figures = exact.get(criteria.get(c).criterion().id());
      curves[c] = criteria.get(c).counts() ? new ValueCurve(criteria.get(c).value()) : null;
      known[c] = curves[c] == null || figures == null ? null : column(c, figures);
    }
  }

  /** Figures that no draw moves; what layers only enclose is scored in full, once for all. */
  private double[] exact(BoundPlugins bound, int criterion) {
    double[] figures = steady.low(criterion).clone();
    for (int i = 0; i < figures.length; i++) {
      if (figures[i] < steady.high(criterion)[i]) {
        figures[i] = bound.figure(structures.get(i), bound.criteria().get(criterion));
      }
    }
    return figures;
  }

  private static Map<String, Integer> index(BoundPlugins bound) {
    Map<String, Integer> index = new HashMap<>();
    for (int c = 0; c < bound.criteria().size(); c++) {
      index.put(bound.criteria().get(c).id(), c);
    }
    return index;
  }

  /**
   * The values of a world.
   *
   * @param bound the plugins that a draw moves
   * @param moved what they say
   */
  World of(BoundPlugins bound, ListedFigures moved) {
    Reading reading = new Reading(bound, moved);
    double[][] values = new double[curves.length][];
    for (int c = 0; c < curves.length; c++) {
      if (curves[c] != null) {
        values[c] = known[c] == null ? reading.values(c) : known[c];
      }
    }
    return new World(values, reading.ranked());
  }

  private double[] column(int criterion, double[] figures) {
    double[] values = new double[figures.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = value(criterion, figures[i]);
    }
    return values;
  }

  private double value(int criterion, double figure) {
    return Double.isNaN(figure) ? 0 : curves[criterion].value(figure);
  }

  /** Reads the figures of one world. */
  private final class Reading {

    private final BoundPlugins bound;
    private final Map<String, Integer> index;
    private final ListedFigures moved;

    Reading(BoundPlugins bound, ListedFigures moved) {
      this.bound = bound;
      this.index = WorldValues.index(bound);
      this.moved = moved;
    }

    double[] values(int criterion) {
      int at = index.get(model.criteria().get(criterion).criterion().id());
      double[] low = moved.low(at);
      double[] high = moved.high(at);
      double[] values = column(criterion, low);
      for (int i = 0; low != high && i < values.length; i++) {
        if (low[i] < high[i]) {
          values[i] = between(criterion, at, i, low[i], high[i]);
        }
      }
      return values;
    }

    private double between(int criterion, int at, int structure, double low, double high) {
      double lowest = curves[criterion].lowest(low, high);
      double highest = curves[criterion].highest(low, high);
      return highest - lowest <= NARROW
          ? (lowest + highest) / 2
          : value(criterion, inFull(structure, at));
    }

    private double inFull(int structure, int criterion) {
      return bound.figure(structures.get(structure), bound.criteria().get(criterion));
    }

    boolean[] ranked() {
      boolean[] ranked = new boolean[structures.size()];
      for (int i = 0; i < ranked.length; i++) {
        ranked[i] = !steady.blocked(i) && !moved.blocked(i);
      }
      for (Limit limit : model.limits()) {
        double[] figures = exact.get(limit.criterion());
        for (int i = 0; i < ranked.length; i++) {
          ranked[i] = ranked[i] && (figures == null ? keeps(limit, i) : limit.allows(figures[i]));
        }
      }
      return ranked;
    }

    private boolean keeps(Limit limit, int structure) {
      int at = index.get(limit.criterion());
      double low = moved.low(at)[structure];
      double high = moved.high(at)[structure];
      if (Double.isNaN(low) || Double.isNaN(high)) {
        return false;
      }
      boolean lowKeeps = limit.allows(low);
      return lowKeeps == limit.allows(high) ? lowKeeps : limit.allows(inFull(structure, at));
    }
  }
}
