package plyworth.workbench.command.robustness;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.command.print.Percent;
import plyworth.workbench.command.print.TextColumns;
import plyworth.workbench.robustness.Acceptability;
import plyworth.workbench.robustness.Chance;
import plyworth.workbench.robustness.Doubt;
import plyworth.workbench.robustness.Reach;

/** Prints how often candidates come first while weights and inputs are uncertain. */
final class ChancesText {

  private ChancesText() {}

  /** Prints them, as many as {@code top}. */
  static void print(Ranked ranked, Acceptability acceptability, int top, PrintWriter out) {
    Acceptability.Plan plan = acceptability.plan();
    out.println();
    out.println(
        Paragraph.of(
            "",
            String.format(
                Locale.ROOT,
                "Weights and inputs uncertain together: %,d draws, seed %d, %s; every input within"
                    + " its range, the same figure wherever it is read. %s",
                acceptability.draws(),
                plan.seed(),
                weights(plan.doubt()),
                acceptability.precise()
                    ? "Shares of first place have a standard error of "
                        + precision(plan)
                        + " or less."
                    : "The limit of draws was reached before every standard error was down to "
                        + precision(plan)
                        + ".")));
    out.println();
    List<Chance> first = acceptability.chances().stream().filter(c -> c.first() > 0).toList();
    table(ranked, first.subList(0, Math.min(top, first.size())), out);
    out.println(
        Paragraph.of(
            "",
            String.format(
                Locale.ROOT,
                "%d came first at least once, %d are listed. %s",
                first.size(),
                Math.min(top, first.size()),
                reach(acceptability.reach()))));
  }

  private static String reach(Reach reach) {
    String compared =
        reach.whole()
            ? "Compared are all %,d candidates that are ranked at typical figures, with"
            : "Compared are %,d candidates: the best at typical figures, under the weighting and under"
                + " weights drawn likewise, with";
    String said =
        String.format(
            Locale.ROOT,
            compared
                + " the best of every weighting, that of least regret and those that overtake the"
                + " leader; %,d of them were among the first ten in some draw.",
            reach.compared(),
            reach.reaching());
    if (reach.whole()) {
      return said;
    }
    return said
        + String.format(
            Locale.ROOT,
            reach.lastReaching() == 0
                ? " None of the %d that were let in last was, so it matters little that others are"
                    + " not seen here."
                : " Of the %d that were let in last, %d were: others, which are not seen here, could"
                    + " be as well.",
            reach.last(),
            reach.lastReaching());
  }

  /** What is taken to be known of the weights, in words. */
  static String weights(Doubt doubt) {
    return switch (doubt) {
      case EXACT -> "weights as they are";
      case AROUND -> "weights around the weighting (Dirichlet, concentration 50)";
      case ORDER -> "any weights in the order of the weighting";
      case ANY -> "any weights";
    };
  }

  private static String precision(Acceptability.Plan plan) {
    return new Percent(plan.precision()).toString();
  }

  private static void table(Ranked ranked, List<Chance> chances, PrintWriter out) {
    List<List<String>> rows = new ArrayList<>();
    List<String> structures = new ArrayList<>();
    for (Chance chance : chances) {
      rows.add(
          List.of(
              share(chance.first()),
              "±" + share(chance.firstError()),
              share(chance.amongThree()),
              share(chance.amongTen()),
              share(chance.unranked()),
              share(chance.confidence())));
      structures.add(ranked.structure(chance.path()).toString());
    }
    TextColumns.print(
        out,
        List.of("first", "error", "first three", "first ten", "not ranked", "confidence"),
        rows,
        structures);
  }

  static String share(double share) {
    return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}
