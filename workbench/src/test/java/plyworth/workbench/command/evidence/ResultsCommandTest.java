package plyworth.workbench.command.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;
import plyworth.workbench.command.part.Failures;

class ResultsCommandTest {

  private static final String LDPE =
      """
      { "material": "ldpe", "property": "o2-permeability", "value": 220000,
        "unit": "cm3.um/(m2.day.bar)", "spread": 1.1, "samples": 3, "method": "ASTM D3985",
        "date": "2026-05-04" }
      """;

  private static final String BASELINE =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 50 g/m2"
          + " / ldpe 12 um @extrusion-lamination / aluminium-foil 7 um !bright-out"
          + " / ldpe 25 um @extrusion-coating";

  @TempDir Path folder;

  private CommandLineRun results(String materials, String candidates, Object... more) {
    String section =
        "\"results\": { \"measured_materials\": ["
            + (materials + "], \"measured_candidates\": [" + candidates + "] }, \"weightings\":");
    Path study = BrothStudy.in(folder, BrothStudy.with("\"weightings\":", section));
    return more.length == 0
        ? CommandLineRun.of("results", study)
        : CommandLineRun.of("results", study, more[0], more[1]);
  }

  private static String grammage(double value) {
    return """
        { "structure": "%s", "criterion": "cost/grammage", "value": %s, "unit": "g/m2",
          "spread": 1.02, "samples": 5, "method": "ISO 536" }
        """
        .formatted(BASELINE, value);
  }

  @Test
  void jsonHasTheDocumentedKeysInTheirOrder() {
    CommandLineRun run = results(LDPE, grammage(110), "--format", "json");
    assertThat(run.code()).isZero();
    assertThat(run.keys())
        .containsExactly(
            "format",
            "version",
            "study",
            "weighting",
            "materials",
            "candidates",
            "leaderBefore",
            "leader");
    assertThat(run.keys("materials", 0))
        .containsExactly("material", "property", "unit", "at", "before", "readings", "after");
    assertThat(run.keys("candidates", 0))
        .containsExactly("structure", "criterion", "predicted", "reading", "ratio");
  }

  @Test
  void readingMovesTheFigureThatTheStudyReckonsWith() {
    CommandLineRun run = results(LDPE, "", "--format", "json");
    assertThat(run.number("materials", 0, "before", "typical")).isEqualTo(190_000);
    assertThat(run.number("materials", 0, "after", "typical")).isBetween(190_000.0, 220_000.0);
  }

  @Test
  void candidateThatWeighsTwiceAsMuchAsPredictedIsToldFromOneThatAgrees() {
    CommandLineRun run = results("", grammage(250));
    assertThat(run.out()).contains("outside of what was predicted");
    double predicted =
        results("", grammage(250), "--format", "json")
            .number("candidates", 0, "predicted", "typical");
    assertThat(results("", grammage(predicted)).out())
        .contains("measured over predicted 1; within what was predicted");
  }

  @Test
  void leaderIsSaidBeforeAndAfter() {
    assertThat(results(LDPE, "").out()).containsAnyOf("The leader stays", "The leader changes");
  }

  @Test
  void readingOfWhatNoMaterialCanBeIsRefusedWhereItStands() {
    CommandLineRun run = results(LDPE.replace("220000", "1e12"), "");
    assertThat(run.code()).isEqualTo(Failures.WRONG_INPUT);
    assertThat(run.err())
        .contains("the o2-permeability of ldpe is measured as 1E12")
        .contains("must lie between")
        .contains("measured_materials");
  }

  @Test
  void studyWithoutResultsSaysWhereTheyGo() {
    CommandLineRun run = CommandLineRun.of("results", BrothStudy.in(folder));
    assertThat(run.code()).isEqualTo(Failures.WRONG_INPUT);
    assertThat(run.err()).contains("holds no results").contains("measured_materials");
  }
}
