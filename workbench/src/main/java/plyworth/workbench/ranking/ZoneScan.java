package plyworth.workbench.ranking;

import java.util.Arrays;
import java.util.function.Function;
import plyworth.workbench.engine.table.Chunk;

/** Visits the candidates of bands that may be good enough, zone by zone and strip by strip. */
final class ZoneScan {

  private static final Group[] GROUPS = Group.values();

  private final Groups groups;
  private final ValueBounds bounds;
  private final ValueModel model;
  private final boolean open;
  private final double floor;
  private final TableScan.Visitor visitor;
  private final Level zones;
  private final Level strips;
  private final Level rows;
  private final double[] byZone = new double[Bands.ZONES];
  private final double[] byStrip = new double[Weights.EIGHT];
  private final double[] byRow = new double[Strips.ROWS];

  /** For the bands of a table under a model; see {@link TableScan}. */
  ZoneScan(
      Groups groups,
      ValueBounds bounds,
      ValueModel model,
      boolean open,
      double floor,
      TableScan.Visitor visitor) {
    this.groups = groups;
    this.bounds = bounds;
    this.model = model;
    this.open = open;
    this.floor = floor;
    this.visitor = visitor;
    zones = level(bounds.slots().chunks(), CriterionBounds::zones);
    strips = level(bounds.slots().zones(), CriterionBounds::strips);
    rows = level(bounds.slots().strips(), CriterionBounds::rows);
  }

  private Level level(Slots slots, Function<CriterionBounds, SlotBounds> of) {
    int[] counting = Weights.counting(model);
    SlotBounds[] all =
        Arrays.stream(counting)
            .mapToObj(c -> of.apply(bounds.of(c).bounds()))
            .toArray(SlotBounds[]::new);
    return new Level(slots, bounds.generation(counting), Weights.of(model, counting), all);
  }

  /** Visits a band of the table. */
  void band(int band) {
    int chunk = band / Bands.PER_CHUNK;
    int first = band % Bands.PER_CHUNK * Bands.ZONES;
    zones.sum(chunk, 0, first, byZone);
    int[] ranked = groups.rankedPerZone(chunk);
    int count = Math.min(Bands.ZONES, ranked.length - first);
    for (int z = 0; z < count; z++) {
      if ((open || ranked[first + z] > 0) && reaches(byZone[z], path(chunk, first + z, 0))) {
        zone(chunk, first + z);
      }
    }
  }

  private void zone(int chunk, int zone) {
    int end = Math.min(groups.of(chunk).length, (zone + 1) * Chunk.ZONE);
    for (int part = 0; part < Strips.PER_ZONE; part += Weights.EIGHT) {
      strips.sum(chunk, zone, part, byStrip);
      for (int s = 0; s < Weights.EIGHT; s++) {
        int from = zone * Chunk.ZONE + (part + s) * Strips.ROWS;
        if (from < end && reaches(byStrip[s], path(chunk, 0, from))) {
          strip(chunk, from, Math.min(end, from + Strips.ROWS));
        }
      }
    }
  }

  private void strip(int chunk, int from, int to) {
    byte[] group = groups.of(chunk);
    rows.sum(chunk, from / Strips.ROWS, 0, byRow);
    for (int row = from; row < to; row++) {
      long path = path(chunk, 0, row);
      if (group[row] <= Group.OPEN.ordinal() && reaches(byRow[row - from], path)) {
        double worst = bounds.worst(model, path);
        visitor.visit(path, GROUPS[group[row]], worst, bounds.best(model, path));
      }
    }
  }

  private boolean reaches(double value, long path) {
    return value >= floor && value >= visitor.least() && visitor.admits(value, path);
  }

  private static long path(int chunk, int zone, int row) {
    return (long) chunk * Chunk.ROWS + (long) zone * Chunk.ZONE + row;
  }
}
