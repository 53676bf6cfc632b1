package plyworth.workbench.robustness.turn;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Sourced;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Study;
import plyworth.workbench.host.CsvLine;

/** A list of open questions for a laboratory to fill in, and the same read back. */
public final class QuestionList {

  /** What is asked, and behind it what a laboratory fills in. */
  private static final List<String> ASKED =
      List.of("material", "property", "at", "unit", "low", "typical", "high", "kind", "source");

  private static final List<String> FILLED =
      List.of("value", "spread", "samples", "method", "date", "note");

  private QuestionList() {}

  private static List<String> header() {
    List<String> header = new ArrayList<>(ASKED);
    header.addAll(FILLED);
    return header;
  }

  /**
   * The list as comma-separated values, the unknown figures first.
   *
   * @param top how many of the others to list
   */
  public static String text(OpenQuestions questions, int top) {
    StringBuilder lines = new StringBuilder(CsvLine.of(header()));
    for (OpenQuestions.Unknown unknown : questions.unknown()) {
      lines.append(
          line(List.of(unknown.material(), unknown.property(), "", "", "", "", "", "", "")));
    }
    questions.questions().stream()
        .limit(top)
        .forEach(question -> lines.append(line(asked(question))));
    return lines.toString();
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

  private static String line(List<String> asked) {
    List<String> cells = new ArrayList<>(asked);
    cells.addAll(Collections.nCopies(FILLED.size(), ""));
    return CsvLine.of(cells);
  }

  /**
   * A line that was filled in.
   *
   * @param line its number in the file
   */
  public record Answer(int line, MaterialResult result) {}

  /**
   * A line that was filled in wrongly.
   *
   * @param what what it speaks of
   */
  public record Refused(String what, DataException wrong) {}

  /**
   * What was filled in.
   *
   * @param answers lines that can be taken over
   * @param refused lines that cannot
   */
  public record Filled(List<Answer> answers, List<Refused> refused) {

    /** Copies the lists. */
    public Filled {
      answers = List.copyOf(answers);
      refused = List.copyOf(refused);
    }

    /**
     * The answers, all or none.
     *
     * @throws DataException with the first line that is wrong; it suppresses one for each other
     */
    public List<MaterialResult> strictly() {
      if (!refused.isEmpty()) {
        DataException first = refused.get(0).wrong();
        refused.stream().skip(1).forEach(other -> first.addSuppressed(other.wrong()));
        throw first;
      }
      return answers.stream().map(Answer::result).toList();
    }
  }

  /**
   * Reads the list back; lines without a value are left out.
   *
   * @param text the list
   * @param source name of its file, for messages
   * @param study the study that is asked about; a reading that it holds already is refused
   * @throws DataException when it is no such list
   */
  public static Filled read(String text, String source, Study study) {
    MaterialLibrary library = study.materialsBefore();
    Set<MaterialResult> known = new HashSet<>(study.results().materials());
    List<Answer> answers = new ArrayList<>();
    List<Refused> refused = new ArrayList<>();
    for (Csv.Row row : Csv.read(text, source, header())) {
      if (!row.text("value").isEmpty()) {
        try {
          MaterialResult result = result(row, library);
          if (!known.add(result)) {
            throw new DataException(row.place(), "the study holds this reading already", "");
          }
          answers.add(new Answer(row.place().line(), result));
        } catch (DataException e) {
          refused.add(new Refused(row.text("material") + ", " + row.text("property"), e));
        }
      }
    }
    return new Filled(answers, refused);
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
