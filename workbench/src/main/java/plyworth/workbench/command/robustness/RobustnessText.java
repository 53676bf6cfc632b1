package plyworth.workbench.command.robustness;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.CriterionText;
import plyworth.workbench.command.print.HindrancesText;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.robustness.WeightInterval;

/** Prints for people how far a ranking can be trusted. */
final class RobustnessText {

  private final Ranked ranked;
  private final List<WeightInterval> intervals;
  private final PrintWriter out;

  private RobustnessText(Ranked ranked, List<WeightInterval> intervals, PrintWriter out) {
    this.ranked = ranked;
    this.intervals = intervals;
    this.out = out;
  }

  static void print(RobustnessCommand.Robustness found, PrintWriter out) {
    Ranked ranked = found.ranked();
    out.println(ranked.study().title());
    out.println();
    if (ranked.best().isEmpty()) {
      HindrancesText.print(ranked, out);
    } else {
      RobustnessText text = new RobustnessText(ranked, found.intervals(), out);
      text.leader();
      text.stability();
      StakeholdersText.print(ranked, found.stakeholders(), out);
      SecondOpinionText.print(ranked, found.second(), out);
      found.weightsAlone().ifPresent(w -> WeightChancesText.print(ranked, w, found.top(), out));
      found.acceptability().ifPresent(a -> ChancesText.print(ranked, a, found.top(), out));
    }
    out.println();
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  private void leader() {
    out.println("Weighting \"" + ranked.study().weighting() + "\":");
    RankedCandidate first = ranked.best().get(0);
    out.printf(Locale.ROOT, "  Leader, value %.3f:%n", first.value());
    out.println(structure(first.path()));
    if (ranked.best().size() > 1) {
      RankedCandidate second = ranked.best().get(1);
      double behind = Math.max(0, first.value() - second.value());
      out.printf("  Runner-up, %s behind:%n", Digits.sensible(behind));
      out.println(structure(second.path()));
    } else {
      out.println("  No other candidate is ranked.");
    }
  }

  private void stability() {
    out.println();
    if (intervals.isEmpty()) {
      out.println("No criterion counts: every value is 0, and no weight can be judged.");
      return;
    }
    out.println("Each weight alone, the others keeping their proportions: the leader stays first");
    out.println("(figures at their typical values, the unknown at its worst)");
    for (WeightInterval interval : intervals) {
      out.printf(
          Locale.ROOT,
          "  from %7s to %7s, now %7s%s  %s%n",
          share(interval.lower().weight()),
          share(interval.upper().weight()),
          share(interval.weight()),
          interval.tied() ? ", level with another" : "",
          CriterionText.named(ranked, interval.criterion()));
      overtaker("below", interval.lower());
      overtaker("above", interval.upper());
    }
    if (intervals.stream().anyMatch(i -> !i.lower().defined())) {
      out.println(
          Paragraph.of(
              "  ",
              "– means: all the weight stands on this criterion, so nothing says how the others"
                  + " would share what it gives up."));
    }
  }

  private void overtaker(String side, WeightInterval.End end) {
    end.overtaker()
        .ifPresent(
            path -> {
              out.println("    " + side + ":");
              out.println(structure(path));
            });
  }

  private static String share(double share) {
    return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.2f %%", 100 * share);
  }

  private String structure(long path) {
    return Paragraph.structure("      ", ranked.structure(path).toString());
  }
}
