package plyworth.workbench.ranking;

import java.util.List;
import java.util.Optional;
import plyworth.shared.scoring.ValueFunction;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Zones;

/**
 * Between which values the candidates of a chunk or zone lie, for every criterion. Weights do not
 * matter to it, so it is kept while they move. The unknown counts as 0.
 */
final class ValueBounds {

  /** Zones in a span, a level between zone and chunk. */
  static final int SPAN = 8;

  private final CandidateTable table;
  private final List<ValueFunction> functions;
  private final boolean[] same;
  private ValueBounds former;
  private final ValueCurve[] curves;
  private final ZoneValues kept;
  private final double[][] wholes;
  private final double[][][] spanHighest;
  private final double[][][] zoneHighest;
  private final double[][][] zoneLowest;

  /**
   * The bounds of a table.
   *
   * @param before bounds of the same table under other value functions, of which those that are the
   *     same are taken over; empty when there are none
   */
  ValueBounds(CandidateTable table, ValueModel model, Optional<ValueBounds> before) {
    this.table = table;
    functions = functions(model);
    former = before.orElse(null);
    same = new boolean[functions.size()];
    for (int c = 0; c < same.length; c++) {
      same[c] = before.isPresent() && former.functions.get(c).equals(functions.get(c));
    }
    before.ifPresent(ValueBounds::forget);
    curves = functions.stream().map(ValueCurve::new).toArray(ValueCurve[]::new);
    kept = new ZoneValues(curves);
    wholes = new double[curves.length][table.chunks()];
    spanHighest = new double[table.chunks()][][];
    zoneHighest = new double[table.chunks()][][];
    zoneLowest = new double[table.chunks()][][];
    for (int c = 0; c < curves.length; c++) {
      if (same[c]) {
        wholes[c] = former.wholes[c];
      } else {
        for (int chunk = 0; chunk < table.chunks(); chunk++) {
          boolean there = table.chunk(chunk).has(c);
          wholes[c][chunk] = there ? highest(c, table.chunk(chunk).whole())[0] : 0;
        }
      }
    }
  }

  /** One state before is enough to take over from. */
  private void forget() {
    former = null;
  }

  private static List<ValueFunction> functions(ValueModel model) {
    return model.criteria().stream().map(Weighed::value).toList();
  }

  /** Whether it holds for a model. */
  boolean fits(ValueModel model) {
    return functions.equals(functions(model));
  }

  /** The value functions of the criteria. */
  ValueCurve[] curves() {
    return curves;
  }

  /** Values of single candidates, kept for the zones last looked at; for rankings alone. */
  ZoneValues kept() {
    return kept;
  }

  /** The same, kept nowhere. */
  ZoneValues fresh() {
    return new ZoneValues(curves);
  }

  /** Highest values in each chunk, criterion by chunk. */
  double[][] wholes() {
    return wholes;
  }

  /** Highest values in the spans of a chunk, criterion by span. */
  synchronized double[][] spans(int chunk) {
    if (spanHighest[chunk] == null) {
      double[][] zones = highest(chunk);
      int spans = (table.chunk(chunk).zones().count() + SPAN - 1) / SPAN;
      double[][] highest = new double[zones.length][spans];
      for (int c = 0; c < zones.length; c++) {
        for (int z = 0; z < zones[c].length; z++) {
          highest[c][z / SPAN] = Math.max(highest[c][z / SPAN], zones[c][z]);
        }
      }
      spanHighest[chunk] = highest;
    }
    return spanHighest[chunk];
  }

  /** Highest values in the zones of a chunk, criterion by zone. */
  synchronized double[][] highest(int chunk) {
    if (zoneHighest[chunk] == null) {
      double[][] known = former == null ? null : former.zoneHighest[chunk];
      zoneHighest[chunk] = highest(table.chunk(chunk), known);
    }
    return zoneHighest[chunk];
  }

  /** Lowest values in the zones of a chunk, criterion by zone. */
  synchronized double[][] lowest(int chunk) {
    if (zoneLowest[chunk] == null) {
      zoneLowest[chunk] = lowest(table.chunk(chunk), table.chunk(chunk).zones());
    }
    return zoneLowest[chunk];
  }

  /** The highest values in zones, taken over from before where functions are the same. */
  private double[][] highest(Chunk chunk, double[][] known) {
    double[][] highest = new double[curves.length][];
    for (int c = 0; c < curves.length; c++) {
      if (known != null && same[c]) {
        highest[c] = known[c];
      } else {
        int zones = chunk.zones().count();
        highest[c] = chunk.has(c) ? highest(c, chunk.zones()) : new double[zones];
      }
    }
    return highest;
  }

  private double[] highest(int criterion, Zones zones) {
    double[] highest = new double[zones.count()];
    for (int z = 0; z < highest.length; z++) {
      float low = zones.lowest(criterion)[z];
      float high = zones.highest(criterion)[z];
      highest[z] = low <= high ? curves[criterion].highest(low, high) : 0;
    }
    return highest;
  }

  private double[][] lowest(Chunk chunk, Zones zones) {
    double[][] lowest = new double[curves.length][zones.count()];
    for (int c = 0; c < curves.length; c++) {
      for (int z = 0; chunk.has(c) && z < zones.count(); z++) {
        float low = zones.lowest(c)[z];
        float high = zones.highest(c)[z];
        boolean known = low <= high && !zones.unknown(c)[z];
        lowest[c][z] = known ? curves[c].lowest(low, high) : 0;
      }
    }
    return lowest;
  }
}
