package plyworth.workbench.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranges;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.engine.Objection;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** Scores any structure under a study's brief, also one that is not on offer. */
@Command(
    name = "score",
    mixinStandardHelpOptions = true,
    description = "Scores any structure under a study's brief, also one that is not on offer.")
final class ScoreCommand implements Callable<Integer> {

  private static final int DRAWS = 100;

  /** Ways to print a score. */
  enum Format {
    /** For people. */
    TABLE,
    /** For programs. */
    JSON
  }

  @ParentCommand private Plyworth program;

  @Mixin private StudyArgument study;

  @Option(
      names = "--structure",
      required = true,
      paramLabel = "\"LAYER / LAYER\"",
      description = {
        "The layers, outside first: material amount unit, then @process, !side and coverage %%",
        "where they matter. Example: \"ink-wb 1.5 g/m2 @flexo-water / kraft-paper 50 g/m2\""
      })
  private String structure;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "table",
      description = "table or json.")
  private Format format;

  @Override
  public Integer call() throws IOException {
    Structure read = LayerNotation.readStructure(structure);
    Ranked ranked = SingleStructure.ready(program, study, read);
    Sheet sheet = ranked.sheet(read);
    Map<String, Range> ranges = Ranges.of(ranked.scored().compiled().prepared(), read, DRAWS, 1);
    if (format == Format.JSON) {
      program.out().print(JsonPrint.text(SheetJson.of(ranked, sheet, ranges)));
    } else {
      print(ranked, sheet, ranges);
    }
    program.out().flush();
    return Failures.DONE;
  }

  private void print(Ranked ranked, Sheet sheet, Map<String, Range> ranges) {
    PrintWriter out = program.out();
    out.println(sheet.structure());
    for (Objection objection : sheet.objections()) {
      out.println("  not on offer: " + objection.reason());
    }
    out.printf(
        Locale.ROOT,
        "value %.3f under \"%s\", %s%n%n",
        sheet.valuation().value(),
        ranked.study().weighting(),
        sheet.group().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    List<Weighed> criteria = ranked.ranking().model().criteria();
    for (int c = 0; c < criteria.size(); c++) {
      criterion(ranked, sheet, ranges, c);
    }
    out.println();
    sheet.remarks().forEach(r -> out.println(FindingText.of(ranked, r)));
    out.println();
    out.println("Ranges: middle 90 % of " + DRAWS + " random draws of all inputs.");
  }

  private void criterion(Ranked ranked, Sheet sheet, Map<String, Range> ranges, int c) {
    Weighed weighed = ranked.ranking().model().criteria().get(c);
    Valuation.Part part = sheet.valuation().parts().get(c);
    program
        .out()
        .printf(
            Locale.ROOT,
            "%14s  %-22s %s%n",
            CriterionText.figure(ranked, weighed, part.low()),
            range(ranges.get(weighed.criterion().id()), weighed),
            CriterionText.named(ranked, c) + missing(ranked, weighed, sheet.outcomes().get(c)));
  }

  private static String range(Range range, Weighed weighed) {
    boolean shown = range.known() && weighed.criterion().criterion().classes().isEmpty();
    return shown
        ? "(" + Digits.sensible(range.low()) + " – " + Digits.sensible(range.high()) + ")"
        : "";
  }

  private static String missing(Ranked ranked, Weighed weighed, Outcome outcome) {
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
