package plyworth.workbench.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.BrothStudy;

/** A plugin written elsewhere, against the shared module alone, works like the built-in ones. */
class StrangerPluginTest {

  @TempDir Path folder;
  @TempDir Path plugins;
  private Path study;

  @BeforeEach
  void pluginLiesBesideTheBuiltInOnes() throws IOException {
    OwnPlugins.copyTo(plugins);
    StrangerPlugin.in(plugins);
    study =
        BrothStudy.in(
            folder,
            BrothStudy.with("\"barrier/margin\": 3,", "\"barrier/margin\": 3, \"taint/risk\": 4,"));
  }

  private CommandLineRun run(Object... arguments) {
    CommandLineRun run =
        CommandLineRun.of(
            Stream.concat(Stream.of(arguments), Stream.of("--plugins", plugins)).toArray());
    assertThat(run.code()).isZero();
    return run;
  }

  @Test
  void isListed() {
    assertThat(run("plugins").out())
        .contains("taint: Taint, version 2.1, from taint.jar", "taint/risk", "4 g/m² (0.1 to 10)");
  }

  @Test
  void isScoredAndRankedAndWeighs() {
    CommandLineRun run = run("rank", study, "--format", "json", "--top", 47);
    assertThat(run.number("weighting", "weights", "taint/risk")).isCloseTo(0.25, offset(1e-9));
    Object[] first = {"candidates", 0, "criteria", "taint/risk"};
    assertThat(run.keys(first))
        .containsExactly("value", "unit", "conditions", "worth", "contribution");
    assertThat(run.number("candidates", 0, "criteria", "taint/risk", "value")).isEqualTo(0.35);
    assertThat(run.number("candidates", 0, "criteria", "taint/risk", "worth")).isEqualTo(0.65);
    assertThat(run.text("candidates", 0, "criteria", "taint/risk", "conditions"))
        .isEqualTo("23 °C");
  }

  @Test
  void blocksByItsOwnRule() {
    String structure = "ink-wb 5 g/m2 @flexo-water / kraft-paper 50 g/m2 / lldpe 40 um";
    CommandLineRun run = run("score", study, "--structure", structure, "--format", "json");
    assertThat(run.text("standing")).isEqualTo("blocked");
    assertThat(run.out()).contains("\"heavy-print\"", "5 g/m2 of print may taint the product");
    assertThat(run.number("ranges", "taint/risk", "typical")).isEqualTo(1.25);
  }

  @Test
  void isExplainedInTextAndJson() {
    assertThat(run("explain", study, "1").out())
        .contains("== Taint ==", "Print, g/m2", "EN 1230 settles taint.");
    CommandLineRun json = run("explain", study, "1", "--format", "json");
    assertThat(json.keys("explanation", "taint", 0))
        .containsExactly("title", "columns", "rows", "basis");
    assertThat(json.keys("explanation", "taint", 1))
        .containsExactly("title", "unit", "labels", "lengths", "basis");
    assertThat(json.keys("explanation", "taint", 2))
        .containsExactly("title", "x", "y", "series", "basis");
    assertThat(json.keys("explanation", "taint", 3)).containsExactly("title", "basis");
  }

  @Test
  void standsInTheChartAndInTheTable() throws IOException {
    Path chart = folder.resolve("chart.svg");
    CommandLineRun run = run("rank", study, "--chart", chart);
    assertThat(run.out()).contains("taint/risk: Taint risk (23 °C)");
    assertThat(Files.readString(chart, StandardCharsets.UTF_8)).contains("Taint risk");
  }

  @Test
  void thatThrowsIsLeftOutWithItsReasonAndTheRestIsRanked() {
    StrangerPlugin.in(plugins, "if (risk >= 0) throw new IllegalStateException(\"lost\");");
    for (Object[] command :
        new Object[][] {
          {"rank", study, "--format", "json"},
          {"score", study, "--structure", "lldpe 40 um", "--format", "json"},
          {"explain", study, "baseline", "--format", "json"}
        }) {
      CommandLineRun run = run(command);
      assertThat(run.err()).contains("left out: taint", "lost").hasLineCount(1);
      assertThat(run.out()).doesNotContain("taint/risk").contains("\"version\": 1");
    }
  }

  @Test
  void thatFailsOnlyInPlacesIsLeftOutToo() {
    StrangerPlugin.in(
        plugins,
        "if (structure.outermost().material().equals(\"ink-nc\")) throw new Error(\"no\");"
            .replace("new Error", "new AssertionError"));
    CommandLineRun run = run("rank", study, "--format", "json");
    assertThat(run.err()).contains("left out: taint");
    assertThat(run.number("weighting", "sharedOut")).isCloseTo(0.25, offset(1e-9));
  }

  @Test
  void thatAnswersNothingIsLeftOut() {
    StrangerPlugin.in(plugins, "if (risk >= 0) return null;");
    assertThat(run("score", study, "--structure", "lldpe 40 um").err())
        .contains("left out: taint: it answers with no score");
  }
}
