package plyworth.workbench.robustness;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.Progress;

/**
 * How often each of some candidates comes first while weights and inputs are uncertain together.
 *
 * @param chances the candidates, those most often first before the others
 * @param reach how many of them there are, and whether the field was wide enough
 * @param draws number of draws
 * @param precise whether every standard error is within the precision asked for; otherwise the
 *     limit of draws was reached before
 * @param plan what was asked for
 */
public record Acceptability(
    List<Chance> chances, Reach reach, int draws, boolean precise, Plan plan) {

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
   * @param named candidates to compare whatever they are worth
   */
  public static Acceptability of(Ranked ranked, List<Long> named, Plan plan) {
    return of(ranked, named, plan, Progress.NONE);
  }

  /**
   * Draws for a ranked study.
   *
   * @param named candidates to compare whatever they are worth, besides the best
   * @param progress told how many draws are made of how many at most; may cancel, and what is drawn
   *     by then counts
   */
  public static Acceptability of(Ranked ranked, List<Long> named, Plan plan, Progress progress) {
    Field field = Field.of(ranked, named, plan.doubt(), plan.seed());
    Worlds worlds =
        new Worlds(
            ranked.scored().compiled().prepared(),
            ranked.ranking().model(),
            field.paths().stream().map(ranked::structure).toList());
    return of(field, Contest.of(ranked).weights(), worlds, plan, progress);
  }

  /**
   * Draws.
   *
   * @param weights the weighting
   * @param worlds what the candidates of the field are worth, by seed
   */
  static Acceptability of(
      Field field, double[] weights, LongFunction<World> worlds, Plan plan, Progress progress) {
    Draws draws = Draws.of(weights, plan);
    Chances chances = new Chances(field.paths());
    AtomicInteger drawn = new AtomicInteger();
    boolean precise = false;
    while (!precise && chances.draws() < plan.most() && !progress.cancelled()) {
      int from = chances.draws();
      int to = Math.min(from + Math.max(BATCH, from / 4), plan.most());
      IntStream.range(from, to)
          .parallel()
          .filter(draw -> !progress.cancelled())
          .mapToObj(
              draw -> {
                Sample sample = draws.sample(draw, worlds);
                progress.scored(drawn.incrementAndGet(), plan.most());
                return sample;
              })
          .toList()
          .forEach(chances::add);
      precise = chances.draws() > 0 && chances.worstError() <= plan.precision();
    }
    return new Acceptability(
        ordered(chances), Reach.of(field, chances), chances.draws(), precise, plan);
  }

  private static List<Chance> ordered(Chances chances) {
    return chances.all().stream()
        .sorted(
            Comparator.comparingDouble(Chance::first)
                .thenComparingDouble(Chance::amongThree)
                .thenComparingDouble(Chance::amongTen)
                .reversed()
                .thenComparingLong(Chance::path))
        .toList();
  }
}
