package plyworth.workbench.command.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.Json;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;
import plyworth.workbench.command.part.Failures;

class QuestionsCommandTest {

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = BrothStudy.in(folder);
  }

  private CommandLineRun questions(String format) {
    CommandLineRun run = CommandLineRun.of("questions", study, "--format", format);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    return run;
  }

  /** The list with the first figure that is no table measured as its low end. */
  private Path filled(String value) throws IOException {
    List<String> lines = questions("csv").out().lines().toList();
    StringBuilder list = new StringBuilder(lines.get(0) + "\n");
    String[] cells = lines.get(1).split(",", -1);
    String measured = value.isEmpty() ? cells[4] : value;
    list.append(lines.get(1), 0, lines.get(1).length() - 5)
        .append(measured)
        .append(",1.05,3,ASTM D3985,2026-06-01,\n");
    lines.stream().skip(2).forEach(line -> list.append(line).append('\n'));
    return Files.writeString(folder.resolve("answers.csv"), list);
  }

  @Test
  void jsonHasTheDocumentedKeysInTheirOrder() {
    CommandLineRun run = questions("json");
    assertThat(run.keys())
        .containsExactly(
            "format",
            "version",
            "study",
            "weighting",
            "leader",
            "rivals",
            "complete",
            "unknown",
            "questions");
    assertThat(run.keys("questions", 0))
        .containsExactly(
            "material",
            "property",
            "unit",
            "low",
            "typical",
            "high",
            "kind",
            "source",
            "rival",
            "lead",
            "least");
  }

  @Test
  void gravestComeFirstAndEachTakesSomethingFromTheLead() {
    CommandLineRun run = questions("json");
    int many = ((Json.Arr) run.json("questions")).items().size();
    List<Double> least =
        IntStream.range(0, many).mapToObj(i -> run.number("questions", i, "least")).toList();
    assertThat(least).isNotEmpty().isSorted();
    for (int i = 0; i < many; i++) {
      assertThat(run.number("questions", i, "lead")).isGreaterThan(least.get(i));
    }
  }

  @Test
  void listThatWasFilledInIsReadBack() throws IOException {
    Path answers = filled("");
    CommandLineRun run = CommandLineRun.of("results", study, "--with", answers, "--format", "json");
    assertThat(run.code()).isZero();
    double low = run.number("materials", 0, "readings", 0, "value");
    assertThat(run.number("materials", 0, "after", "typical"))
        .isBetween(low, run.number("materials", 0, "before", "typical"));
  }

  @Test
  void resultsCanBeWrittenIntoANewStudyThatReckonsWithThem() throws IOException {
    Path measured = folder.resolve("measured" + StudyFile.SUFFIX);
    CommandLineRun run =
        CommandLineRun.of("results", study, "--with", filled(""), "--to", measured);
    assertThat(run.code()).isZero();
    assertThat(StudyFile.open(measured).study().results().materials()).hasSize(1);
    assertThat(CommandLineRun.of("results", measured).out()).isEqualTo(run.out());
    assertThat(CommandLineRun.of("results", study, "--with", filled(""), "--to", measured).err())
        .contains("exists already");
  }

  @Test
  void wrongAnswerIsRefusedWithItsLine() throws IOException {
    CommandLineRun run = CommandLineRun.of("results", study, "--with", filled("much"));
    assertThat(run.code()).isEqualTo(Failures.WRONG_INPUT);
    assertThat(run.err()).contains("answers.csv", "line 2", "\"much\"", "is not a number");
  }

  @Test
  void impossibleAnswerIsRefused() throws IOException {
    CommandLineRun run = CommandLineRun.of("results", study, "--with", filled("1e30"));
    assertThat(run.code()).isEqualTo(Failures.WRONG_INPUT);
    assertThat(run.err()).contains("answers.csv", "is measured as", "must lie between");
  }

  @Test
  void tableSaysWhoLeadsWhomItMayLoseToAndWhereAFigureComesFrom() {
    assertThat(questions("table").out()).contains("leads:", "Rival 1:", "known from:");
  }
}
