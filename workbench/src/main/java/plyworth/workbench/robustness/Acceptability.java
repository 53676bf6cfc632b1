package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.Progress;

/**
 * How often each of some candidates comes first while weights and inputs are uncertain together.
 *
 * @param chances the candidates, those most often first before the others
 * @param draws number of draws
 * @param precise whether every standard error is within the precision asked for; otherwise the
 *     limit of draws was reached before
 * @param plan what was asked for
 */
public record Acceptability(List<Chance> chances, int draws, boolean precise, Plan plan) {

  /** Copies the list. */
  public Acceptability {
    chances = List.copyOf(chances);
  }

  /**
   * What to draw.
   *
   * @param doubt what is known of the weights
   * @param most limit of draws
   * @param precision standard error of the share of first ranks at which to stop
   * @param seed the draws repeat with the seed
   */
  public record Plan(Doubt doubt, int most, double precision, long seed) {}

  /** Fewest draws between two looks at the precision; looks grow rarer as draws add up. */
  private static final int BATCH = 100;

  /**
   * Draws for a ranked study, to the end.
   *
   * @param paths the candidates to compare; others are not seen
   */
  public static Acceptability of(Ranked ranked, List<Long> paths, Plan plan) {
    return of(ranked, paths, plan, Progress.NONE);
  }

  /**
   * Draws for a ranked study.
   *
   * @param paths the candidates to compare; others are not seen
   * @param progress told how many draws are made of how many at most; may cancel, and what is drawn
   *     by then counts
   */
  public static Acceptability of(Ranked ranked, List<Long> paths, Plan plan, Progress progress) {
    Prepared prepared = ranked.scored().compiled().prepared();
    Worlds worlds =
        new Worlds(
            prepared, ranked.ranking().model(), paths.stream().map(ranked::structure).toList());
    return of(paths, Contest.of(ranked).weights(), worlds::values, plan, progress);
  }

  /**
   * Draws.
   *
   * @param weights the weighting
   * @param worlds values by seed, candidate by criterion; null for what is not ranked
   */
  static Acceptability of(
      List<Long> paths, double[] weights, LongFunction<double[][]> worlds, Plan plan) {
    return of(paths, weights, worlds, plan, Progress.NONE);
  }

  static Acceptability of(
      List<Long> paths,
      double[] weights,
      LongFunction<double[][]> worlds,
      Plan plan,
      Progress progress) {
    AtomicInteger drawn = new AtomicInteger();
    LongFunction<double[][]> watched =
        seed -> {
          double[][] values = worlds.apply(seed);
          progress.scored(drawn.incrementAndGet(), plan.most());
          return values;
        };
    WeightSampler sampler = new WeightSampler(weights, plan.doubt());
    SplittableRandom random = new SplittableRandom(plan.seed());
    List<Sample> samples = new ArrayList<>();
    List<Chance> chances = List.of();
    boolean precise = false;
    while (!precise && samples.size() < plan.most() && !progress.cancelled()) {
      int batch = Math.min(Math.max(BATCH, samples.size() / 4), plan.most() - samples.size());
      samples.addAll(batch(sampler, random, watched, batch, progress));
      if (samples.isEmpty()) {
        break;
      }
      chances = Chances.of(paths, samples);
      precise = worstError(chances, samples.size()) <= plan.precision();
    }
    return new Acceptability(
        chances.stream()
            .sorted(
                Comparator.comparingDouble(Chance::first)
                    .thenComparingDouble(Chance::amongThree)
                    .reversed()
                    .thenComparingLong(Chance::path))
            .toList(),
        samples.size(),
        precise,
        plan);
  }

  /** Each draw has its own seed, so that the draws do not depend on how many threads make them. */
  private static List<Sample> batch(
      WeightSampler sampler,
      SplittableRandom random,
      LongFunction<double[][]> worlds,
      int draws,
      Progress progress) {
    long[] seeds = LongStream.generate(random::nextLong).limit(draws).toArray();
    return LongStream.of(seeds)
        .parallel()
        .filter(seed -> !progress.cancelled())
        .mapToObj(seed -> new Sample(sampler.draw(new SplittableRandom(seed)), worlds.apply(seed)))
        .toList();
  }

  /**
   * The largest standard error. Always or never first so far is not yet certain: a share is also
   * looked at as if it had come first once more and once not (Laplace's rule of succession).
   */
  private static double worstError(List<Chance> chances, int draws) {
    return chances.stream()
        .mapToDouble(
            chance ->
                Math.max(
                    chance.firstError(),
                    Chances.error((chance.first() * draws + 1) / (draws + 2), draws + 2)))
        .max()
        .orElse(0);
  }
}
