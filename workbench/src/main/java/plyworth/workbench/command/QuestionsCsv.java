package plyworth.workbench.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Sourced;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.MaterialResult;
import plyworth.workbench.robustness.turn.OpenQuestions;

/** A list for a laboratory to fill in, and the same read back. */
final class QuestionsCsv {

  /** What is asked, and behind it what a laboratory fills in. */
  private static final List<String> ASKED =
      List.of("material", "property", "at", "unit", "low", "typical", "high", "kind", "source");

  private static final List<String> FILLED =
      List.of("value", "spread", "samples", "method", "date", "note");

  private QuestionsCsv() {}

  private static List<String> header() {
    List<String> header = new ArrayList<>(ASKED);
    header.addAll(FILLED);
    return header;
  }

  static void print(QuestionsCommand.Answer answer, PrintWriter out) {
    CsvLine.print(out, header());
    for (OpenQuestions.Unknown unknown : answer.questions().unknown()) {
      List<String> asked =
          List.of(unknown.material(), unknown.property(), "", "", "", "", "", "", "");
      line(out, asked);
    }
    answer.questions().questions().stream()
        .limit(answer.top())
        .forEach(question -> line(out, asked(question)));
  }

  private static List<String> asked(OpenQuestions.Question question) {
    Sourced origin = question.origin();
    return List.of(
        question.material(),
        question.property().id(),
        CsvLine.number(origin.at()),
        question.property().unit(),
        CsvLine.number(origin.range().low()),
        CsvLine.number(origin.range().typical()),
        CsvLine.number(origin.range().high()),
        Choice.plain(origin.kind()),
        origin.source());
  }

  private static void line(PrintWriter out, List<String> asked) {
    List<String> cells = new ArrayList<>(asked);
    cells.addAll(Collections.nCopies(FILLED.size(), ""));
    CsvLine.print(out, cells);
  }

  /**
   * The lines that were filled in; those without a value are left out.
   *
   * @param text the list
   * @param source name of its file, for messages
   * @param library the materials that were measured
   * @throws DataException with the line that is wrong
   */
  static List<MaterialResult> read(String text, String source, MaterialLibrary library) {
    List<MaterialResult> results = new ArrayList<>();
    for (Csv.Row row : Csv.read(text, source, header())) {
      if (!row.text("value").isEmpty()) {
        results.add(result(row, library));
      }
    }
    return List.copyOf(results);
  }

  private static MaterialResult result(Csv.Row row, MaterialLibrary library) {
    try {
      MaterialResult result =
          new MaterialResult(
              library.require(row.text("material")).id(),
              row.numberOrUnknown("at"),
              reading(row, row.number("samples")));
      result.requireIn(library);
      return result;
    } catch (IllegalArgumentException e) {
      throw new DataException(row.place(), e.getMessage(), "");
    }
  }

  private static Measurement reading(Csv.Row row, double samples) {
    return new Measurement(
        row.text("property"),
        row.number("value"),
        row.text("unit"),
        row.number("spread"),
        samples == Math.rint(samples) ? (int) samples : 0,
        row.text("method"),
        row.text("date"),
        row.text("note"));
  }
}
