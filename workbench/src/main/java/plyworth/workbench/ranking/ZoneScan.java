package plyworth.workbench.ranking;

import java.util.Arrays;
import plyworth.workbench.engine.table.Chunk;

/** Visits the candidates of zones that may be good enough, strip by strip. */
final class ZoneScan {

  private static final Group[] GROUPS = Group.values();

  private final Groups groups;
  private final ValueBounds bounds;
  private final CriterionValues[] criteria;
  private final double[] weights;
  private final int generation;
  private final double[][] stripValues;
  private final double[][] rowValues;
  private final double[][] zoneValues;
  private final boolean open;
  private final double floor;
  private final TableScan.Visitor visitor;
  private final double[] zones = new double[Bands.ZONES];
  private final double[] strips = new double[Strips.PER_ZONE];
  private final double[] best = new double[Strips.ROWS];

  /** For the zones of a table under a model; see {@link TableScan}. */
  ZoneScan(
      Groups groups,
      ValueBounds bounds,
      ValueModel model,
      boolean open,
      double floor,
      TableScan.Visitor visitor) {
    this.groups = groups;
    this.bounds = bounds;
    this.open = open;
    this.floor = floor;
    this.visitor = visitor;
    int[] counting = Weights.counting(model);
    criteria = Arrays.stream(counting).mapToObj(bounds::of).toArray(CriterionValues[]::new);
    generation = bounds.generation(counting);
    zoneValues = new double[criteria.length][];
    stripValues = Arrays.stream(criteria).map(CriterionValues::strips).toArray(double[][]::new);
    rowValues = Arrays.stream(criteria).map(CriterionValues::best).toArray(double[][]::new);
    weights = Arrays.stream(counting).mapToDouble(c -> model.criteria().get(c).weight()).toArray();
  }

  /** Visits a band of the table. */
  void band(int band) {
    int chunk = band / Bands.PER_CHUNK;
    int first = band % Bands.PER_CHUNK * Bands.ZONES;
    for (int i = 0; i < criteria.length; i++) {
      zoneValues[i] = criteria[i].highest(chunk);
    }
    Weights.sumEight(weights, zoneValues, first, zones, 0);
    int[] ranked = groups.rankedPerZone(chunk);
    int count = Math.min(Bands.ZONES, ranked.length - first);
    for (int z = 0; z < count; z++) {
      long path = (long) chunk * Chunk.ROWS + (long) (first + z) * Chunk.ZONE;
      if ((open || ranked[first + z] > 0) && reaches(zones[z], path)) {
        zone(chunk, first + z);
      }
    }
  }

  private boolean reaches(double value, long path) {
    return value >= floor && value >= visitor.least() && visitor.admits(value, path);
  }

  private void zone(int chunk, int zone) {
    sumUp(chunk, zone);
    int first = zone * Strips.PER_ZONE;
    int count = Math.min(Strips.PER_ZONE, Strips.in(groups.of(chunk).length) - first);
    for (int s = 0; s < count; s++) {
      long path = (long) chunk * Chunk.ROWS + (long) (first + s) * Strips.ROWS;
      if (reaches(strips[s], path)) {
        strip(chunk, first + s);
      }
    }
  }

  private void sumUp(int chunk, int zone) {
    int slot = bounds.zones().of(chunk, zone);
    if (!bounds.zones().isFilled(slot, generation)) {
      fillStrips(chunk, zone, slot);
    }
    for (int s = 0; s < Strips.PER_ZONE; s += 8) {
      Weights.sumEight(weights, stripValues, slot * Strips.PER_ZONE + s, strips, s);
    }
  }

  private void fillStrips(int chunk, int zone, int slot) {
    for (int i = 0; i < criteria.length; i++) {
      criteria[i].fillStrips(chunk, zone, slot, bounds.zones().round());
      stripValues[i] = criteria[i].strips();
    }
    bounds.zones().filled(slot, generation);
  }

  private void strip(int chunk, int strip) {
    byte[] group = groups.of(chunk);
    int from = strip * Strips.ROWS;
    int slot = bounds.strips().of(chunk, strip);
    if (!bounds.strips().isFilled(slot, generation)) {
      fillRows(chunk, strip, slot);
    }
    Weights.sumEight(weights, rowValues, slot * Strips.ROWS, best, 0);
    int count = Math.min(Strips.ROWS, group.length - from);
    double least = Math.max(floor, visitor.least());
    for (int j = 0; j < count; j++) {
      if (best[j] >= least && group[from + j] <= Group.OPEN.ordinal()) {
        double worst = worst(slot * Strips.ROWS + j);
        visitor.visit(
            (long) chunk * Chunk.ROWS + from + j, GROUPS[group[from + j]], worst, best[j]);
      }
    }
  }

  private void fillRows(int chunk, int strip, int slot) {
    for (int i = 0; i < criteria.length; i++) {
      criteria[i].fillRows(chunk, strip, slot, bounds.strips().round());
      rowValues[i] = criteria[i].best();
    }
    bounds.strips().filled(slot, generation);
  }

  private double worst(int at) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * criteria[i].worst(at, bounds.strips().round());
    }
    return sum;
  }
}
