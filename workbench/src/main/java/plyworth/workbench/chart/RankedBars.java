package plyworth.workbench.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** Makes {@link RankingBars} of a ranked study: the best candidates and the baseline. */
public final class RankedBars {

  private static final int LABEL_LENGTH = 96;

  private final Ranked ranked;
  private final List<Weighed> criteria;
  private final int[] counting;

  private RankedBars(Ranked ranked) {
    this.ranked = ranked;
    criteria = ranked.ranking().model().criteria();
    counting = IntStream.range(0, criteria.size()).filter(c -> criteria.get(c).counts()).toArray();
  }

  /** The bars of the best {@code n} and of the baseline. */
  public static RankingBars of(Ranked ranked, int n, Locale locale) {
    return new RankedBars(ranked).bars(n, locale);
  }

  private RankingBars bars(int n, Locale locale) {
    BoundPlugins bound = ranked.scored().compiled().prepared().bound();
    List<String> names = new ArrayList<>();
    for (int c : counting) {
      BoundCriterion criterion = criteria.get(c).criterion();
      names.add(
          Sentences.of(
              bound.plugins().get(criterion.plugin()).plugin(),
              criterion.criterion().title(),
              locale));
    }
    List<RankingBars.Bar> bars = new ArrayList<>();
    for (RankedCandidate candidate : ranked.best().subList(0, Math.min(n, ranked.best().size()))) {
      Structure structure = ranked.structure(candidate.path());
      bars.add(
          bar(
              bars.size() + 1 + "  " + Labels.brief(structure),
              structure,
              candidate.valuation(),
              RankingBars.Standing.RANKED));
    }
    bars.add(baseline());
    return new RankingBars(ranked.study().title(), names, bars);
  }

  private RankingBars.Bar baseline() {
    Group group = ranked.baseline().group();
    String standing =
        switch (group) {
          case RANKED -> "today  ";
          case OPEN, CANNOT_BE_JUDGED -> "today, cannot be judged  ";
          case EXCLUDED -> "today, excluded  ";
          case BLOCKED -> "today, blocked  ";
        };
    Structure structure = ranked.baseline().structure();
    return bar(
        standing + Labels.brief(structure),
        structure,
        ranked.baseline().valuation(),
        group == Group.RANKED ? RankingBars.Standing.BASELINE : RankingBars.Standing.BASELINE_OUT);
  }

  private RankingBars.Bar bar(
      String label, Structure structure, Valuation valuation, RankingBars.Standing standing) {
    List<Double> contributions = new ArrayList<>();
    for (int c : counting) {
      contributions.add(valuation.parts().get(c).contribution());
    }
    String shortened =
        label.length() <= LABEL_LENGTH ? label : label.substring(0, LABEL_LENGTH - 1) + "…";
    return new RankingBars.Bar(
        shortened, structure.toString(), contributions, valuation.valueHigh(), standing);
  }
}
