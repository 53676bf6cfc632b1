package plyworth.workbench.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plyworth.shared.data.Choice;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** Makes {@link RankingBars} of a ranked study: the baseline, then candidates, best first. */
public final class RankedBars {

  private final Ranked ranked;
  private final MaterialLibrary materials;
  private final List<Weighed> criteria;
  private final int[] counting;
  private final TodayReview today;
  private final ChartWords words;
  private Set<Layer> above = Set.of();

  private RankedBars(Ranked ranked, TodayReview today, ChartWords words) {
    this.ranked = ranked;
    this.today = today;
    this.words = words;
    materials = ranked.study().materialsAtHand();
    criteria = ranked.ranking().model().criteria();
    counting = IntStream.range(0, criteria.size()).filter(c -> criteria.get(c).counts()).toArray();
  }

  /**
   * The bars of the baseline and of listed candidates.
   *
   * @param today what was measured on today's pack, which the note tells whether it corrects
   *     anything
   * @param most not more candidates than that
   */
  public static RankingBars of(
      Ranked ranked, BestList listed, TodayReview today, int most, Locale locale) {
    return new RankedBars(ranked, today, new ChartWords(locale)).bars(listed, most);
  }

  private RankingBars bars(BestList listed, int most) {
    List<RankingBars.Bar> bars = new ArrayList<>();
    bars.add(baseline());
    for (BestList.Entry entry : listed.entries()) {
      if (bars.size() <= most) {
        bars.add(
            bar(
                name(entry.rank(), bars.size()),
                ranked.structure(entry.candidate().path()),
                entry.candidate().valuation(),
                RankingBars.Standing.RANKED));
      }
    }
    String note = note(bars.size() - 1, listed.eachKind());
    return new RankingBars(ranked.study().title(), note, names(), bars, words);
  }

  /** The rank; where it is not known, the place in the list, in brackets. */
  private static String name(OptionalLong rank, int place) {
    return rank.isPresent() ? Long.toString(rank.getAsLong()) : "(" + place + ")";
  }

  private String note(int shown, boolean eachKind) {
    if (shown == 0) {
      return words.of("note.none");
    }
    boolean counted = ranked.ranking().isCounted();
    String best =
        words.of(
            (eachKind ? "note.kinds." : "note.all.") + (counted ? "ranked" : "candidates"),
            shown,
            counted
                ? ranked.ranking().counts().ranked()
                : ranked.scored().compiled().paths().count(),
            ranked.study().weighting());
    String told =
        words.of(today.correcting().isEmpty() ? "note.not-calibrated" : "note.calibrated", best);
    return ranked.ranking().complete() ? told : words.of("note.partial", told);
  }

  private List<String> names() {
    BoundPlugins bound = ranked.scored().compiled().prepared().bound();
    List<String> names = new ArrayList<>();
    for (int c : counting) {
      BoundCriterion criterion = criteria.get(c).criterion();
      String title =
          Sentences.of(bound.plugin(criterion), criterion.criterion().title(), words.locale());
      names.add(names.contains(title) ? title + " (" + criterion.id() + ")" : title);
    }
    return names;
  }

  private RankingBars.Bar baseline() {
    Group group = ranked.baseline().group();
    return bar(
        words.of("today." + Choice.plain(group)),
        ranked.baseline().structure(),
        ranked.baseline().valuation(),
        group == Group.RANKED ? RankingBars.Standing.BASELINE : RankingBars.Standing.BASELINE_OUT);
  }

  private RankingBars.Bar bar(
      String name, Structure structure, Valuation valuation, RankingBars.Standing standing) {
    List<RankingBars.Ply> plies = structure.layers().stream().map(this::ply).toList();
    above = structure.layers().stream().collect(Collectors.toSet());
    List<Double> contributions = new ArrayList<>();
    for (int c : counting) {
      contributions.add(valuation.parts().get(c).contribution());
    }
    return new RankingBars.Bar(name, plies, contributions, valuation.valueHigh(), standing);
  }

  private RankingBars.Ply ply(Layer layer) {
    Material material = materials.require(layer.material());
    return new RankingBars.Ply(
        Labels.brief(layer),
        layer.toString(),
        material.family(),
        layer.gaugeUm(material.density()),
        above.contains(layer));
  }
}
