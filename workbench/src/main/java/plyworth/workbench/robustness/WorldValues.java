package plyworth.workbench.robustness;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.scoring.Assessment;
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
  private final Map<String, Integer> steadyIndex;
  private final ListedFigures steady;
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
    this.steadyIndex = index(bound);
    this.steady = steady;
    List<Weighed> criteria = model.criteria();
    curves = new ValueCurve[criteria.size()];
    known = new double[curves.length][];
    for (int c = 0; c < curves.length; c++) {
      curves[c] = criteria.get(c).counts() ? new ValueCurve(criteria.get(c).value()) : null;
      Integer at = steadyIndex.get(criteria.get(c).criterion().id());
      known[c] = curves[c] == null || at == null ? null : column(c, steady.low(at));
    }
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
    private final double[][] inFull = new double[structures.size()][];

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
          : value(criterion, inFull(structure)[at]);
    }

    private double[] inFull(int structure) {
      if (inFull[structure] == null) {
        Map<String, Assessment> assessments = bound.score(structures.get(structure));
        inFull[structure] = bound.figures(assessments);
      }
      return inFull[structure];
    }

    boolean[] ranked() {
      boolean[] ranked = new boolean[structures.size()];
      for (int i = 0; i < ranked.length; i++) {
        ranked[i] = !steady.blocked(i) && !moved.blocked(i);
      }
      for (Limit limit : model.limits()) {
        Optional<Integer> fixed = Optional.ofNullable(steadyIndex.get(limit.criterion()));
        int at = fixed.orElseGet(() -> index.get(limit.criterion()));
        ListedFigures figures = fixed.isPresent() ? steady : moved;
        for (int i = 0; i < ranked.length; i++) {
          ranked[i] = ranked[i] && keeps(limit, i, at, figures.low(at)[i], figures.high(at)[i]);
        }
      }
      return ranked;
    }

    private boolean keeps(Limit limit, int structure, int at, double low, double high) {
      if (Double.isNaN(low) || Double.isNaN(high)) {
        return false;
      }
      boolean lowKeeps = limit.allows(low);
      return lowKeeps == limit.allows(high) ? lowKeeps : limit.allows(inFull(structure)[at]);
    }
  }
}
