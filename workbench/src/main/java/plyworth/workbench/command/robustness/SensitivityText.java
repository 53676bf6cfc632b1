package plyworth.workbench.command.robustness;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plyworth.workbench.analysis.InputName;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.CriterionText;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.command.print.TextColumns;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;
import plyworth.workbench.robustness.Influence;
import plyworth.workbench.robustness.Sensitivity;
import plyworth.workbench.robustness.UncertainInput;

/** Prints for people which uncertain inputs make a figure uncertain. */
final class SensitivityText {

  /** Inputs of a smaller total index are not listed. */
  private static final double LISTED = 0.005;

  private final Ranked ranked;
  private final SensitivityCommand.Found found;
  private final Sensitivity sensitivity;
  private final PrintWriter out;

  private SensitivityText(SensitivityCommand.Found found, PrintWriter out) {
    this.found = found;
    ranked = found.ranked();
    sensitivity = found.sensitivity();
    this.out = out;
  }

  static void print(SensitivityCommand.Found found, PrintWriter out) {
    SensitivityText text = new SensitivityText(found, out);
    text.head();
    if (text.sensitivity.varies()) {
      text.shares();
    } else {
      out.println("No uncertain input moves it.");
    }
    text.work();
    out.println();
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  private void head() {
    out.println(ranked.study().title());
    out.println(Paragraph.structure("", found.sheet().structure().toString()));
    out.println();
    String named =
        found.criterion().isPresent()
            ? CriterionText.named(ranked, found.criterion().getAsInt())
            : "value under the weighting \"" + ranked.study().weighting() + "\"";
    out.println(named);
    out.printf(
        "  typical %s, mean %s, standard deviation %s%n%n",
        Digits.sensible(found.typical()),
        Digits.sensible(sensitivity.mean()),
        Digits.sensible(sensitivity.deviation()));
  }

  private void shares() {
    List<Influence> listed =
        sensitivity.influences().stream().filter(i -> i.total().share() >= LISTED).toList();
    List<List<String>> rows = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (Influence influence : listed) {
      InputName text = InputName.of(ranked, influence.input().id());
      rows.add(row(influence, text));
      names.add(text + (influence.input().tabulated() ? " (at the first of several gauges)" : ""));
    }
    TextColumns.print(
        out,
        List.of("alone", "95 %", "in all", "95 %", "low", "typical", "high", "unit"),
        rows,
        names);
    out.printf(
        Locale.ROOT,
        "%d other uncertain inputs have less than %s in all.%n%n",
        sensitivity.influences().size() - listed.size(),
        percent(LISTED));
    out.println(
        Paragraph.of(
            "",
            "Shares of the variance: what an input explains alone (first-order index; together "
                + percent(sensitivity.alone())
                + "), and what would be left if all others were known (total index, which counts"
                + " what inputs do together for each of them)."));
  }

  private static List<String> row(Influence influence, InputName text) {
    UncertainInput input = influence.input();
    return List.of(
        percent(influence.first().share()),
        interval(influence.first()),
        percent(influence.total().share()),
        interval(influence.total()),
        Digits.sensible(input.range().low()),
        Digits.sensible(input.range().typical()),
        Digits.sensible(input.range().high()),
        UnitText.of(text.unit()));
  }

  private static String interval(Influence.Index index) {
    return String.format(Locale.ROOT, "%.1f to %.1f", 100 * index.low(), 100 * index.high());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }

  private void work() {
    out.println(
        Paragraph.of(
            "",
            String.format(
                Locale.ROOT,
                "%,d uncertain inputs, independent of each other, %,d base points, seed %d: scored"
                    + " %,d times. Intervals by bootstrap, which errs on the wide side here.",
                sensitivity.influences().size(),
                sensitivity.plan().points(),
                sensitivity.plan().seed(),
                sensitivity.worlds())));
    if (sensitivity.unknown() > 0) {
      out.printf(
          Locale.ROOT,
          "%,d base points are left out, because the figure is unknown there.%n",
          sensitivity.unknown());
    }
    if (!sensitivity.held().isEmpty()) {
      out.println(
          Paragraph.of(
              "",
              "Asked for too rarely to be seen in time, and left at the typical figure: "
                  + String.join(", ", sensitivity.held().stream().sorted().toList())));
    }
  }
}
