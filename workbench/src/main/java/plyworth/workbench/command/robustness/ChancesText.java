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

/** Prints how often candidates come first while weights and inputs are uncertain. */
final class ChancesText {

  private ChancesText() {}

  static void print(Ranked ranked, Acceptability acceptability, PrintWriter out) {
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
    table(ranked, acceptability.chances(), out);
    long never = acceptability.chances().stream().filter(c -> c.first() == 0).count();
    out.println(
        Paragraph.of(
            "",
            String.format(
                Locale.ROOT,
                "Compared are %d candidates: the best of every weighting, that of least regret,"
                    + " and those that overtake the leader; %d of them never came first and are not"
                    + " listed. Others are not seen here.",
                acceptability.chances().size(),
                never)));
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
      if (chance.first() > 0) {
        rows.add(
            List.of(
                share(chance.first()),
                "±" + share(chance.firstError()),
                share(chance.amongThree()),
                share(chance.unranked()),
                share(chance.confidence())));
        structures.add(ranked.structure(chance.path()).toString());
      }
    }
    TextColumns.print(
        out,
        List.of("first", "error", "first three", "not ranked", "confidence"),
        rows,
        structures);
  }

  static String share(double share) {
    return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}
