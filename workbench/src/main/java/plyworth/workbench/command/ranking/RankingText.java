package plyworth.workbench.command.ranking;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import plyworth.shared.brief.Brief;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.PluginSettings;
import plyworth.shared.study.WeightsBy;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.NotMakeable;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.print.BriefText;
import plyworth.workbench.command.print.CriterionText;
import plyworth.workbench.command.print.FindingText;
import plyworth.workbench.command.print.HindrancesText;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.command.print.TextColumns;
import plyworth.workbench.command.print.WeightsByText;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.GroupCounts;
import plyworth.workbench.ranking.ParetoFront;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** Prints a ranking for people. */
final class RankingText {

  private final Ranked ranked;
  private final BestList listed;
  private final Optional<ParetoFront> front;
  private final PrintWriter out;
  private final List<Weighed> criteria;
  private final int[] shown;

  private RankingText(
      Ranked ranked, BestList listed, Optional<ParetoFront> front, PrintWriter out) {
    this.ranked = ranked;
    this.listed = listed;
    this.front = front;
    this.out = out;
    criteria = ranked.ranking().model().criteria();
    shown = IntStream.range(0, criteria.size()).filter(c -> criteria.get(c).counts()).toArray();
  }

  static void print(Ranked ranked, BestList listed, Optional<ParetoFront> front, PrintWriter out) {
    RankingText text = new RankingText(ranked, listed, front, out);
    text.head();
    if (ranked.best().isEmpty()) {
      HindrancesText.print(ranked, out);
      out.println();
    }
    text.table();
    text.baseline();
    text.front();
    ProposalText.print(ranked, out);
    out.println();
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  private void head() {
    out.println(ranked.study().title());
    out.println(Paragraph.of("", ranked.study().question()));
    out.println();
    brief();
    WeightsBy by = ranked.study().activeWeighting().by();
    String origin = WeightsByText.origin(by);
    out.println("Weighting \"" + ranked.study().weighting() + "\"" + origin + ":");
    for (int c : shown) {
      Weighed weighed = criteria.get(c);
      out.printf(
          Locale.ROOT,
          "  %5.1f %%  %s%s%n",
          100 * weighed.weight(),
          CriterionText.named(ranked, c),
          WeightsByText.stated(by, weighed.criterion().id()));
    }
    uncounted();
    out.println();
    out.println(counts());
    notMakeable();
    out.println();
  }

  private String counts() {
    long all = ranked.scored().compiled().paths().count();
    if (!ranked.ranking().isCounted()) {
      return Paragraph.of(
          "",
          String.format(
              Locale.ROOT,
              "%,d candidates. The best were found by a bounded search, which is exact; how many"
                  + " are ranked, blocked or excluded was not counted.",
              all));
    }
    GroupCounts counts = ranked.ranking().counts();
    return String.format(
        Locale.ROOT,
        "%,d candidates: %,d ranked, %,d blocked, %,d excluded by limits, %,d cannot be judged",
        counts.total(),
        counts.ranked(),
        counts.blocked(),
        counts.excluded(),
        counts.cannotBeJudged() + counts.open());
  }

  private void notMakeable() {
    NotMakeable.count(ranked)
        .ifPresent(
            count ->
                out.println(
                    Paragraph.of(
                        "",
                        String.format(
                            Locale.ROOT,
                            "Of the blocked, %,d cannot be made in the plant; why says what stands"
                                + " in the way of each.",
                            count))));
  }

  /** Where packs are stored, how they are treated, what was measured on today's, who makes them. */
  private void brief() {
    Brief brief = ranked.study().brief();
    out.println(Paragraph.of("", "Climate: " + BriefText.of(brief.climate())));
    out.println("Handling: " + BriefText.of(brief.handling()));
    for (Measurement measurement : ranked.study().measurements()) {
      out.println(Paragraph.of("", "Measured today: " + BriefText.of(measurement)));
    }
    ranked
        .study()
        .plant()
        .ifPresent(p -> out.println(Paragraph.of("", "Plant: " + BriefText.of(p))));
    out.println();
  }

  private String unmeasured(String id) {
    String plugin = id.substring(0, id.indexOf('/'));
    return PluginSettings.leftOut(ranked.study()).contains(plugin)
        ? "the study leaves the plugin " + plugin + " out"
        : "no plugin that is loaded measures it";
  }

  /** The criteria whose weight is shared out, each with the reason. */
  private void uncounted() {
    for (Weighed weighed : criteria) {
      if (weighed.asked() > 0 && !weighed.counts()) {
        uncounted(weighed.asked(), weighed.criterion().id(), CriterionText.whyNot(ranked, weighed));
      }
    }
    ranked.ranking().model().lost().forEach((id, share) -> uncounted(share, id, unmeasured(id)));
    if (!ranked.ranking().model().weighted()) {
      out.println("  No criterion counts: every value is 0 and the order means nothing.");
    }
  }

  private void uncounted(double share, String criterion, String why) {
    String line =
        String.format(Locale.ROOT, "(%.1f %%) %s is shared out: %s", 100 * share, criterion, why);
    out.println(Paragraph.of("  ", line));
  }

  private void table() {
    if (listed.eachKind()) {
      out.println(
          "The best of each kind of barrier, printing and sealant (--list all for the rest):");
      out.println();
    }
    List<String> header = new ArrayList<>(List.of("rank", "value"));
    for (int c : shown) {
      header.add(CriterionText.shortName(criteria.get(c)));
    }
    List<List<String>> rows = new ArrayList<>();
    List<String> structures = new ArrayList<>();
    for (BestList.Entry entry : listed.entries()) {
      Structure structure = ranked.structure(entry.candidate().path());
      rows.add(row(rank(entry.rank()), entry.candidate().valuation()));
      structures.add(structure.toString());
    }
    rows.add(row("today", ranked.baseline().valuation()));
    structures.add(ranked.baseline().structure().toString());
    TextColumns.print(out, header, rows, structures);
  }

  private static String rank(OptionalLong rank) {
    return rank.isPresent() ? String.format(Locale.ROOT, "%,d", rank.getAsLong()) : "–";
  }

  private List<String> row(String rank, Valuation valuation) {
    List<String> cells = new ArrayList<>();
    cells.add(rank);
    String value = String.format(Locale.ROOT, "%.3f", valuation.value());
    boolean open = valuation.valueHigh() - valuation.value() > 1e-9;
    cells.add(
        open ? value + "–" + String.format(Locale.ROOT, "%.3f", valuation.valueHigh()) : value);
    for (int c : shown) {
      cells.add(CriterionText.figure(ranked, criteria.get(c), valuation.parts().get(c).low()));
    }
    return cells;
  }

  private void baseline() {
    Sheet today = ranked.baseline();
    out.println();
    out.println(
        "Today's structure is "
            + switch (today.group()) {
              case RANKED -> "free of blocks, " + rankOfBaseline();
              case BLOCKED -> "blocked:";
              case EXCLUDED -> "excluded by a limit";
              default -> "not to be judged: data is missing";
            });
    today.remarks().stream()
        .filter(r -> r.finding().level() != Finding.Level.INFORMS)
        .forEach(r -> out.println(Paragraph.of("  ", FindingText.of(ranked, r))));
  }

  private void front() {
    front.ifPresent(
        found ->
            out.printf(
                Locale.ROOT,
                "%nPareto front: %,d %s that no other beats in every weighted criterion%s%n",
                found.paths().size(),
                found.paths().size() == 1 ? "candidate" : "candidates",
                found.complete() ? "" : " (not complete: more than " + found.cap() + ")"));
  }

  private String rankOfBaseline() {
    if (!ranked.ranking().isCounted()) {
      return "value " + value() + "; its rank was not counted";
    }
    long before = ranked.ranking().worthMoreThan(ranked.baseline().valuation().value());
    return String.format(Locale.ROOT, "rank %,d by value (%s)", before + 1, value());
  }

  private String value() {
    return Digits.sensible(ranked.baseline().valuation().value());
  }
}
