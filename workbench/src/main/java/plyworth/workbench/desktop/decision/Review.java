package plyworth.workbench.desktop.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.desktop.session.CandidateName;
import plyworth.workbench.ranking.Weighed;

/**
 * What a decision is made on.
 *
 * @param ranked the ranking
 * @param today what was measured on today's pack
 * @param stability how far it holds
 * @param recommended what was decided, or the leader while nothing is
 * @param decided whether it was decided
 * @param runnerUp the best of another kind; empty when every ranked candidate is of one kind
 * @param gains what the recommended one gains and loses against today's, the largest first
 */
public record Review(
    Ranked ranked,
    TodayReview today,
    Stability stability,
    Comparison.Column recommended,
    boolean decided,
    Optional<Comparison.Column> runnerUp,
    List<Gain> gains) {

  /**
   * What a criterion adds to the value, or takes from it.
   *
   * @param criterion its place in the value model
   * @param value difference of its contributions, the unknown at its worst
   */
  record Gain(int criterion, double value) {}

  /** Copies the list. */
  public Review {
    gains = List.copyOf(gains);
  }

  /**
   * Puts together what there is to know.
   *
   * @param kinds the best of each kind
   */
  static Review of(Ranked ranked, BestList kinds, TodayReview today) {
    String chosen = ranked.study().decision().structure();
    Structure leader = ranked.structure(ranked.best().get(0).path());
    Structure structure = chosen.isEmpty() ? leader : LayerNotation.readStructure(chosen);
    Sheet sheet = ranked.sheet(structure);
    return new Review(
        ranked,
        today,
        Stability.of(ranked),
        new Comparison.Column(CandidateName.of(ranked, structure), sheet),
        !chosen.isEmpty(),
        runnerUp(ranked, kinds, structure),
        gains(ranked, sheet));
  }

  private static Optional<Comparison.Column> runnerUp(
      Ranked ranked, BestList kinds, Structure structure) {
    Object own = ranked.kinds().of(structure);
    return kinds.entries().stream()
        .map(entry -> ranked.structure(entry.candidate().path()))
        .filter(other -> !ranked.kinds().of(other).equals(own))
        .findFirst()
        .map(other -> new Comparison.Column(CandidateName.of(ranked, other), ranked.sheet(other)));
  }

  private static List<Gain> gains(Ranked ranked, Sheet sheet) {
    List<Weighed> criteria = ranked.ranking().model().criteria();
    List<Gain> gains = new ArrayList<>();
    for (int c = 0; c < criteria.size(); c++) {
      double own = sheet.valuation().parts().get(c).contribution();
      double before = ranked.baseline().valuation().parts().get(c).contribution();
      if (criteria.get(c).counts()) {
        gains.add(new Gain(c, own - before));
      }
    }
    gains.sort(Comparator.comparingDouble((Gain gain) -> -Math.abs(gain.value())));
    return gains;
  }
}
