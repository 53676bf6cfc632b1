package plyworth.workbench.analysis;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;

/**
 * What each criterion of a finished structure can be while its inputs are uncertain: the middle 90
 * % of the figures from random draws of every input, around the typical figure.
 */
public final class Ranges {

  private static final double TAIL = 0.05;

  private Ranges() {}

  /** The same, to the end. */
  public static Map<String, Range> of(
      Prepared prepared, Structure structure, int draws, long seed) {
    return of(prepared, structure, draws, seed, () -> false);
  }

  /**
   * The range of every criterion by full id; unknown where the typical figure is.
   *
   * @param draws number of random draws, at least 20
   * @param seed the draws repeat with the seed
   * @param cancelled asked before each draw; true gives up
   * @throws CancellationException when cancelled
   */
  public static Map<String, Range> of(
      Prepared prepared, Structure structure, int draws, long seed, BooleanSupplier cancelled) {
    Map<String, double[]> samples = new LinkedHashMap<>();
    Map<String, Assessment> typical = prepared.bound().score(structure);
    for (BoundCriterion criterion : prepared.bound().criteria()) {
      samples.put(criterion.id(), new double[draws]);
    }
    for (int i = 0; i < draws; i++) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      BoundPlugins bound =
          prepared.bound().again(prepared.catalog(), prepared.study(), Draw.random(seed + i));
      Map<String, Assessment> drawn = bound.score(structure);
      for (BoundCriterion criterion : bound.criteria()) {
        samples.get(criterion.id())[i] = bound.outcome(drawn, criterion).orUnknown();
      }
    }
    Map<String, Range> ranges = new LinkedHashMap<>();
    for (BoundCriterion criterion : prepared.bound().criteria()) {
      double middle = prepared.bound().outcome(typical, criterion).orUnknown();
      ranges.put(criterion.id(), range(middle, samples.get(criterion.id())));
    }
    return ranges;
  }

  private static Range range(double typical, double[] samples) {
    double[] sorted = Arrays.stream(samples).filter(s -> !Double.isNaN(s)).sorted().toArray();
    if (Double.isNaN(typical) || sorted.length == 0) {
      return Range.UNKNOWN;
    }
    double low = sorted[(int) (TAIL * (sorted.length - 1))];
    double high = sorted[(int) Math.ceil((1 - TAIL) * (sorted.length - 1))];
    return new Range(Math.min(low, typical), typical, Math.max(high, typical));
  }
}
