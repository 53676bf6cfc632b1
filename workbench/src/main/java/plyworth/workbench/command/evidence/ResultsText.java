package plyworth.workbench.command.evidence;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.ResultsReview;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;

/** Prints for people what the results of a study came to. */
final class ResultsText {

  private final ResultsCommand.Answer answer;
  private final PrintWriter out;

  private ResultsText(ResultsCommand.Answer answer, PrintWriter out) {
    this.answer = answer;
    this.out = out;
  }

  static void print(ResultsCommand.Answer answer, PrintWriter out) {
    new ResultsText(answer, out).print();
  }

  private void print() {
    ResultsReview review = answer.review();
    if (!review.materials().isEmpty()) {
      out.println("Materials: what the study reckons with");
      review.materials().forEach(this::material);
      out.println();
      out.println(
          Paragraph.of(
              "",
              "Low to high is the middle 90 %. A reading moves a figure as a normal reading of known"
                  + " deviation moves a normal prior, on the logarithm; all points of a table move"
                  + " together."));
      out.println();
    }
    if (!review.candidates().isEmpty()) {
      out.println("Candidates: predicted, with all corrections, and measured");
      review.candidates().forEach(this::candidate);
      out.println();
    }
    ranking();
    out.println();
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  private void material(ResultsReview.Moved moved) {
    String at = Double.isNaN(moved.at()) ? "" : " at " + Digits.sensible(moved.at());
    out.printf("  %s/%s%s, %s%n", moved.material(), moved.property(), at, unit(moved.unit()));
    out.println("    before  " + range(moved.before()));
    moved
        .readings()
        .forEach(reading -> out.println(Paragraph.of("    ", "read    " + said(reading))));
    out.println("    after   " + range(moved.after()));
  }

  private void candidate(ResultsReview.Compared compared) {
    Measurement reading = compared.reading();
    out.println(Paragraph.structure("  ", compared.structure().toString()));
    out.printf("    %s, %s%n", reading.figure(), unit(reading.unit()));
    out.println("      predicted  " + range(compared.predicted()));
    out.println(Paragraph.of("      ", "read       " + said(reading)));
    out.println("      " + verdict(compared));
  }

  private static String verdict(ResultsReview.Compared compared) {
    Optional<Boolean> agrees = compared.agrees();
    if (agrees.isEmpty()) {
      return "nothing is predicted of it: the figure is unknown, or does not apply";
    }
    return String.format(
        Locale.ROOT,
        "measured over predicted %s; %s",
        Digits.sensible(compared.ratio()),
        agrees.get()
            ? "within what was predicted"
            : "outside of what was predicted: look for what the model leaves out");
  }

  private static String said(Measurement reading) {
    return Digits.sensible(reading.value())
        + (reading.spread() == 1 ? "" : ", within a factor of " + Digits.sensible(reading.spread()))
        + (", " + reading.method())
        + (", " + (reading.samples() == 1 ? "1 sample" : reading.samples() + " samples"))
        + (reading.date().isEmpty() ? "" : ", " + reading.date())
        + (reading.note().isEmpty() ? "" : " (" + reading.note() + ")");
  }

  private static String range(Range range) {
    return range.known()
        ? Digits.sensible(range.typical())
            + ("  (" + Digits.sensible(range.low()) + " to " + Digits.sensible(range.high()) + ")")
        : "unknown";
  }

  private static String unit(String unit) {
    String text = UnitText.of(unit);
    return text.isEmpty() ? "a pure number" : text;
  }

  private void ranking() {
    Optional<String> before = leader(answer.before());
    Optional<String> after = leader(answer.after());
    if (after.isEmpty() || before.isEmpty()) {
      out.println(
          after.isEmpty()
              ? "With the results, no candidate is ranked."
              : "Without, none was ranked.");
    } else if (before.equals(after)) {
      out.printf(
          Locale.ROOT,
          "The leader stays, with a value of %.3f after %.3f:%n",
          value(answer.after()),
          value(answer.before()));
      out.println(Paragraph.structure("  ", after.get()));
    } else {
      out.printf(
          Locale.ROOT,
          "The leader changes. Before, with a value of %.3f:%n",
          value(answer.before()));
      out.println(Paragraph.structure("  ", before.get()));
      out.printf(Locale.ROOT, "Now, with a value of %.3f:%n", value(answer.after()));
      out.println(Paragraph.structure("  ", after.get()));
    }
  }

  static Optional<String> leader(Ranked ranked) {
    return ranked.best().stream().findFirst().map(best -> ranked.structure(best.path()).toString());
  }

  private static double value(Ranked ranked) {
    return ranked.best().get(0).value();
  }
}
