package plyworth.workbench.command.robustness;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.command.print.TextColumns;
import plyworth.workbench.robustness.Stakeholders;

/** Prints the weightings of a study side by side. */
final class StakeholdersText {

  private StakeholdersText() {}

  static void print(Ranked ranked, Stakeholders stakeholders, PrintWriter out) {
    out.println();
    for (String name : stakeholders.weightless()) {
      out.println("The weighting \"" + name + "\" is left out: nothing that it weighs counts.");
    }
    if (stakeholders.weightings().size() < 2) {
      out.println("Stakeholders: there is only one weighting to go by.");
      return;
    }
    out.printf(
        "Stakeholders: rank and value of the %d best of each weighting, and the most that any of"
            + " them loses against its own best%n",
        stakeholders.depth());
    out.println();
    table(ranked, stakeholders, out);
    out.println();
    agreement(stakeholders, out);
    leastRegret(ranked, stakeholders, out);
  }

  private static void table(Ranked ranked, Stakeholders stakeholders, PrintWriter out) {
    List<String> header = new ArrayList<>(List.of("most lost"));
    header.addAll(stakeholders.weightings());
    List<List<String>> rows = new ArrayList<>();
    List<String> structures = new ArrayList<>();
    for (Stakeholders.Standing standing : stakeholders.standings()) {
      rows.add(row(standing));
      structures.add(ranked.structure(standing.path()).toString());
    }
    TextColumns.print(out, header, rows, structures);
  }

  private static List<String> row(Stakeholders.Standing standing) {
    List<String> cells = new ArrayList<>();
    cells.add(String.format(Locale.ROOT, "%.4f", standing.greatestLoss()));
    for (int s = 0; s < standing.values().size(); s++) {
      cells.add(
          String.format(
              Locale.ROOT, "%s  %.3f", rank(standing.ranks().get(s)), standing.values().get(s)));
    }
    return cells;
  }

  private static String rank(OptionalLong rank) {
    return rank.isPresent() ? String.format(Locale.ROOT, "%,d", rank.getAsLong()) : "–";
  }

  private static void agreement(Stakeholders stakeholders, PrintWriter out) {
    int agreed = stakeholders.agreed().size();
    out.printf(
        "%s among the %d best of every weighting.%n",
        agreed == 0
            ? "No candidate stands"
            : agreed == 1 ? "1 candidate stands" : agreed + " candidates stand",
        stakeholders.depth());
  }

  private static void leastRegret(Ranked ranked, Stakeholders stakeholders, PrintWriter out) {
    stakeholders.standings().stream()
        .filter(s -> stakeholders.leastRegret().equals(OptionalLong.of(s.path())))
        .forEach(
            s -> {
              out.printf(
                  Locale.ROOT,
                  "Least regret of all candidates: no weighting loses more than %.4f with%n",
                  s.greatestLoss());
              out.println(Paragraph.structure("  ", ranked.structure(s.path()).toString()));
            });
  }
}
