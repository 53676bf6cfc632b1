package plyworth.workbench.command.candidate;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Locale;
import java.util.Map;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Outcome;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.print.CriterionText;
import plyworth.workbench.command.print.FindingText;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.engine.Objection;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** One structure for people. */
public final class SheetText {

  private final Ranked ranked;
  private final Sheet sheet;
  private final Map<String, Range> ranges;
  private final PrintWriter out;

  private SheetText(Ranked ranked, Sheet sheet, Map<String, Range> ranges, PrintWriter out) {
    this.ranked = ranked;
    this.sheet = sheet;
    this.ranges = ranges;
    this.out = out;
  }

  static String of(Ranked ranked, Sheet sheet, Map<String, Range> ranges, int draws) {
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    new SheetText(ranked, sheet, ranges, out).print(draws);
    out.flush();
    return text.toString();
  }

  private void print(int draws) {
    out.println(Paragraph.structure("", sheet.structure().toString()));
    for (Objection objection : sheet.objections()) {
      out.println(Paragraph.of("  ", "not on offer: " + said(objection)));
    }
    out.printf(
        Locale.ROOT,
        "value %.3f under \"%s\", %s%n%n",
        sheet.valuation().value(),
        ranked.study().weighting(),
        standing(sheet.group()));
    for (int c = 0; c < ranked.ranking().model().criteria().size(); c++) {
      criterion(c);
    }
    out.println();
    sheet.remarks().forEach(r -> out.println(Paragraph.of("", FindingText.of(ranked, r))));
    out.println();
    out.println("Ranges: middle 90 % of " + draws + " random draws of all inputs.");
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  /** An objection with its rule and source. */
  static String said(Objection objection) {
    return objection.isRule()
        ? objection.reason() + " [" + objection.rule() + "; " + objection.source() + "]"
        : objection.reason();
  }

  /** Where a structure stands, in words. */
  static String standing(Group group) {
    return switch (group) {
      case RANKED -> "free of blocks";
      case OPEN, CANNOT_BE_JUDGED -> "not to be judged: data is missing";
      case EXCLUDED -> "excluded by a limit";
      case BLOCKED -> "blocked";
    };
  }

  private void criterion(int c) {
    Weighed weighed = ranked.ranking().model().criteria().get(c);
    Valuation.Part part = sheet.valuation().parts().get(c);
    out.printf(
        Locale.ROOT,
        "%14s  %-22s %s%n",
        CriterionText.figure(ranked, weighed, part.low()),
        range(ranges.get(weighed.criterion().id()), weighed),
        CriterionText.named(ranked, c) + unknown(ranked, weighed, sheet.outcomes().get(c)));
  }

  private static String range(Range range, Weighed weighed) {
    boolean shown = range.known() && weighed.criterion().criterion().classes().isEmpty();
    return shown
        ? "(" + Digits.sensible(range.low()) + " – " + Digits.sensible(range.high()) + ")"
        : "";
  }

  /** Why there is no figure; empty where there is one. */
  public static String unknown(Ranked ranked, Weighed weighed, Outcome outcome) {
    if (outcome instanceof Outcome.DataMissing data) {
      return "; unknown: " + data.subject() + " has no " + data.property();
    }
    if (outcome instanceof Outcome.NotApplicable not) {
      return "; not applicable: "
          + Sentences.of(
              CriterionText.plugin(ranked, weighed.criterion()), not.why(), Locale.ENGLISH);
    }
    return "";
  }
}
