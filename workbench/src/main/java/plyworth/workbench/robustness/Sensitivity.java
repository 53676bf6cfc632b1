package plyworth.workbench.robustness;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import plyworth.shared.scoring.Draw;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.ValueModel;

/**
 * Which uncertain inputs make a figure uncertain: first-order and total Sobol indices over all
 * inputs at once, each within its own distribution and independent of the others.
 *
 * @param influences every uncertain input that is asked for, the largest total index first
 * @param mean mean of the figure
 * @param deviation its standard deviation
 * @param unknown base points left out, because the figure is unknown in some world of theirs
 * @param held inputs that were asked for so rarely that they were first seen during the work; they
 *     stood at their typical figures
 * @param plan what was asked for
 */
public record Sensitivity(
    List<Influence> influences,
    double mean,
    double deviation,
    int unknown,
    Set<String> held,
    Plan plan) {

  /** Copies. */
  public Sensitivity {
    influences = List.copyOf(influences);
    held = Set.copyOf(held);
  }

  /**
   * What to draw.
   *
   * @param points base points, a power of two
   * @param seed the points repeat with the seed
   */
  public record Plan(int points, long seed) {

    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException unless it is a power of two
     */
    public Plan {
      if (Integer.bitCount(points) != 1) {
        throw new IllegalArgumentException(points + " base points are not a power of two");
      }
    }
  }

  /**
   * The sensitivity of a figure of a structure.
   *
   * @param criterion place of the criterion in the model; empty for the value
   * @param progress told how many worlds of how many are scored; may cancel
   * @throws CancellationException when cancelled
   */
  public static Sensitivity of(
      Prepared prepared,
      ValueModel model,
      Structure structure,
      OptionalInt criterion,
      Plan plan,
      Progress progress) {
    Trial trial = Trial.of(prepared, model, structure, criterion);
    List<UncertainInput> inputs = AskedInputs.of(trial::figure, plan.seed());
    Map<String, Integer> places = new HashMap<>();
    inputs.forEach(input -> places.put(input.id(), places.size()));
    Set<String> held = new ConcurrentSkipListSet<>();
    Sensitivity found =
        of(inputs, point -> trial.figure(world(places, point, held)), plan, progress);
    return new Sensitivity(
        found.influences, found.mean, found.deviation, found.unknown, held, plan);
  }

  /** The world at a point; inputs without a coordinate stand at their typical figures. */
  private static Draw world(Map<String, Integer> places, double[] point, Set<String> held) {
    Draw drawn = Draw.at(input -> point[places.get(input)]);
    return (input, range) -> {
      boolean known = places.containsKey(input);
      if (!known && range.low() < range.high()) {
        held.add(input);
      }
      return known ? drawn.figure(input, range) : range.typical();
    };
  }

  /**
   * The sensitivity of a function.
   *
   * @param figure of a point whose coordinates, the quantiles of the inputs, are 0 to 1; called
   *     from several threads
   */
  static Sensitivity of(
      List<UncertainInput> inputs,
      ToDoubleFunction<double[]> figure,
      Plan plan,
      Progress progress) {
    int n = inputs.size();
    Evaluation evaluation = new Evaluation(n, figure, (long) plan.points() * (n + 2), progress);
    double[][] known =
        Arrays.stream(QuasiRandom.points(plan.points(), 2 * n, plan.seed()))
            .parallel()
            .map(evaluation::figures)
            .filter(figures -> Arrays.stream(figures).allMatch(Double::isFinite))
            .toArray(double[][]::new);
    VarianceShares shares = evaluation.shares(known);
    Intervals intervals = Intervals.of(shares, plan.seed());
    return new Sensitivity(
        IntStream.range(0, n)
            .mapToObj(i -> intervals.influence(inputs.get(i), i))
            .sorted(Comparator.comparingDouble((Influence i) -> i.total().share()).reversed())
            .toList(),
        shares.mean(shares.points()),
        Math.sqrt(shares.variance(shares.points())),
        plan.points() - known.length,
        Set.of(),
        plan);
  }

  /** How many worlds were scored: N (n + 2) for N base points and n inputs. */
  public long worlds() {
    return (long) plan.points() * (influences.size() + 2);
  }

  /** Whether the figure varies at all. */
  public boolean varies() {
    return deviation > 0;
  }

  /** The share of the variance that inputs explain one by one; the rest they make together. */
  public double alone() {
    double sum = influences.stream().mapToDouble(i -> i.first().estimate()).sum();
    return new Influence.Index(sum, sum, sum).share();
  }
}
