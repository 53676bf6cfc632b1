package plyworth.workbench.desktop.position;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.LongBinaryOperator;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Offer;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.graph.CandidateGraph;
import plyworth.workbench.engine.graph.OptionFlows;

/**
 * How candidates run through the options: all of them, those that are ranked, and those through
 * what is selected.
 *
 * @param offer what the study offers
 * @param ranking the ranking that {@code ranked} was counted in; null without one
 * @param ranked the ranked candidates; empty until they are known
 * @param choice what is selected; empty for nothing
 * @param chosen all candidates through it
 * @param chosenRanked the ranked candidates through it
 */
record FlowFigures(
    Offer offer,
    Ranked ranking,
    Optional<OptionFlows> ranked,
    Optional<Choice> choice,
    Optional<OptionFlows> chosen,
    Optional<OptionFlows> chosenRanked) {

  /** Some options of a position. */
  record Choice(int position, Set<Integer> options) {}

  /**
   * Works them out; what is known already is kept.
   *
   * @param before what was known; null for nothing
   * @param ranking a ranking, of this study or another; null for none
   * @throws CancellationException when it is stale
   */
  static FlowFigures of(
      FlowFigures before,
      Study study,
      Ranked ranking,
      Optional<Choice> choice,
      BooleanSupplier stale) {
    boolean sameOffer = before != null && before.offer().isOf(study);
    Offer offer = sameOffer ? before.offer() : Offer.of(study, stale);
    Optional<LongBinaryOperator> counted = counted(offer, ranking, stale);
    boolean sameRanking = sameOffer && before.isRankedLike(ranking);
    Optional<OptionFlows> ranked =
        sameRanking ? before.ranked() : counted.map(offer.graph()::flows);
    boolean sameChoice = sameOffer && before.choice().equals(choice);
    CandidateGraph graph = offer.graph();
    return new FlowFigures(
        offer,
        ranking,
        ranked,
        choice,
        sameChoice
            ? before.chosen()
            : choice.map(c -> graph.flows(OptionFlows.EVERY, c.position(), c.options())),
        sameChoice && sameRanking
            ? before.chosenRanked()
            : choice.flatMap(
                c -> counted.map(paths -> graph.flows(paths, c.position(), c.options()))));
  }

  /** Counts the ranked, where the ranking is of the same candidates. */
  private static Optional<LongBinaryOperator> counted(
      Offer offer, Ranked ranking, BooleanSupplier stale) {
    if (ranking == null || !offer.isOf(ranking.study()) || !ranking.ranking().isCounted()) {
      return Optional.empty();
    }
    return Optional.of(
        (from, to) -> {
          if (stale.getAsBoolean()) {
            throw new CancellationException("the flows are not wanted any more");
          }
          return ranking.ranking().rankedBetween(from, to);
        });
  }

  /** Whether the figures are those of a study, a ranking and a selection. */
  boolean areOf(Study study, Ranked now, Optional<Choice> selected) {
    return offer.isOf(study) && isRankedLike(now) && choice.equals(selected);
  }

  /** Whether a ranking leaves out the same candidates: weights do not matter to that. */
  private boolean isRankedLike(Ranked now) {
    if (ranking == null || now == null) {
      return ranking == now;
    }
    return ranking.scored() == now.scored()
        && ranking.ranking().model().limits().equals(now.ranking().model().limits());
  }
}
