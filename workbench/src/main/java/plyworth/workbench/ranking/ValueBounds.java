package plyworth.workbench.ranking;

import java.util.List;
import plyworth.shared.scoring.ValueFunction;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Zones;

/**
 * Between which values the candidates of a chunk or zone lie, for every criterion. Weights do not
 * matter to it, so it is kept while they move. The unknown counts as 0.
 */
final class ValueBounds {

  private final CandidateTable table;
  private final List<ValueFunction> functions;
  private final ValueCurve[] curves;
  private final ZoneValues kept;
  private final double[][][] wholeHighest;
  private final double[][][] zoneHighest;
  private final double[][][] zoneLowest;

  ValueBounds(CandidateTable table, ValueModel model) {
    this.table = table;
    functions = functions(model);
    curves = functions.stream().map(ValueCurve::new).toArray(ValueCurve[]::new);
    kept = new ZoneValues(curves);
    wholeHighest = new double[table.chunks()][][];
    zoneHighest = new double[table.chunks()][][];
    zoneLowest = new double[table.chunks()][][];
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

  /** Highest values in a chunk, criterion by 1. */
  synchronized double[][] whole(int chunk) {
    if (wholeHighest[chunk] == null) {
      wholeHighest[chunk] = highest(table.chunk(chunk), table.chunk(chunk).whole());
    }
    return wholeHighest[chunk];
  }

  /** Highest values in the zones of a chunk, criterion by zone. */
  synchronized double[][] highest(int chunk) {
    if (zoneHighest[chunk] == null) {
      zoneHighest[chunk] = highest(table.chunk(chunk), table.chunk(chunk).zones());
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

  private double[][] highest(Chunk chunk, Zones zones) {
    double[][] highest = new double[curves.length][zones.count()];
    for (int c = 0; c < curves.length; c++) {
      for (int z = 0; chunk.has(c) && z < zones.count(); z++) {
        float low = zones.lowest(c)[z];
        float high = zones.highest(c)[z];
        highest[c][z] = low <= high ? curves[c].highest(low, high) : 0;
      }
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
