package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;
import plyworth.workbench.ranking.LimitTally;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.ValueModel;

/**
 * What a limit does, set or only thought of: how many candidates drop out by it, and who of the
 * best listed without it.
 *
 * @param limit the limit
 * @param tally what it does to all candidates; empty where the table has no figures of its
 *     criterion
 * @param rankedWithout how many candidates are ranked without it
 * @param listed how many of the best without it were looked at
 * @param dropouts those of them that drop out, best first
 */
public record LimitEffect(
    Limit limit,
    Optional<LimitTally> tally,
    long rankedWithout,
    int listed,
    List<Dropout> dropouts) {

  /**
   * One of the best that drops out.
   *
   * @param rank its rank without the limit
   * @param candidate the candidate
   * @param figure its figure; NaN when unknown, so that it cannot be judged
   */
  public record Dropout(int rank, RankedCandidate candidate, double figure) {}

  /** Copies the list. */
  public LimitEffect {
    dropouts = List.copyOf(dropouts);
  }

  /**
   * Finds out. May rank again, for a limit that is set.
   *
   * @param most how many of the best without it are looked at
   * @throws IllegalArgumentException when no criterion that applies has the id of the limit
   */
  public static LimitEffect of(Ranked ranked, Limit limit, int most) {
    Study study = ranked.study();
    Study without = study.withLimits(without(study.limits(), limit));
    boolean set = !without.limits().equals(study.limits());
    Ranked before = set ? ranked.again(without, most) : ranked;
    List<RankedCandidate> best = before.best().subList(0, Math.min(most, before.best().size()));
    int criterion =
        before
            .ranking()
            .model()
            .indexOf(limit.criterion())
            .orElseThrow(() -> new IllegalArgumentException("no criterion " + limit.criterion()));
    List<Dropout> dropouts = new ArrayList<>();
    for (int i = 0; i < best.size(); i++) {
      RankedCandidate candidate = best.get(i);
      double figure = candidate.valuation().parts().get(criterion).low();
      if (!limit.allows(figure)) {
        dropouts.add(new Dropout(i + 1, candidate, figure));
      }
    }
    return new LimitEffect(
        limit, tally(before, limit), before.ranking().counts().ranked(), best.size(), dropouts);
  }

  private static Optional<LimitTally> tally(Ranked before, Limit limit) {
    Study with = before.study().withLimits(set(before.study().limits(), limit));
    ValueModel model =
        ValueModel.of(before.scored().table().criteria(), with, with.activeWeighting());
    return LimitTally.of(before.scored().table(), model, before.exact()).stream()
        .filter(tally -> tally.limit().equals(limit))
        .findFirst();
  }

  /** The limits with one set; it takes the place of one on the same side of its criterion. */
  public static List<Limit> set(List<Limit> limits, Limit limit) {
    List<Limit> changed = new ArrayList<>(limits);
    for (int i = 0; i < changed.size(); i++) {
      if (sameSide(changed.get(i), limit)) {
        changed.set(i, limit);
        return List.copyOf(changed);
      }
    }
    changed.add(limit);
    return List.copyOf(changed);
  }

  /** The limits without that on the same side of a criterion. */
  public static List<Limit> without(List<Limit> limits, Limit limit) {
    return limits.stream().filter(l -> !sameSide(l, limit)).toList();
  }

  private static boolean sameSide(Limit one, Limit other) {
    return one.criterion().equals(other.criterion()) && one.bound() == other.bound();
  }
}
