package plyworth.workbench.command.candidate;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.Json;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

class ExplainCommandTest {

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = BrothStudy.in(folder);
  }

  @Test
  void aRankIsTheCandidateThatTheRankingListsThere() {
    CommandLineRun ranked = CommandLineRun.of("rank", study, "--format", "json", "--top", 5);
    CommandLineRun explained = CommandLineRun.of("explain", study, "5", "--format", "json");
    assertThat(explained.text("structure")).isEqualTo(ranked.text("candidates", 4, "structure"));
  }

  @Test
  void theBaselineAndAnyStructureAreExplained() {
    CommandLineRun baseline = CommandLineRun.of("explain", study, "baseline", "--format", "json");
    assertThat(baseline.text("structure")).contains("aluminium-foil 7 um !bright-out");
    CommandLineRun any = CommandLineRun.of("explain", study, "lldpe 40 um", "--format", "json");
    assertThat(any.text("structure")).isEqualTo("lldpe 40 um");
  }

  @Test
  void everySectionHasTitleAndBasis() {
    CommandLineRun run = CommandLineRun.of("explain", study, "1", "--format", "json");
    assertThat(run.keys())
        .containsExactly("format", "version", "study", "structure", "explanation");
    List<String> plugins = run.keys("explanation");
    assertThat(plugins).hasSize(6);
    for (String plugin : plugins) {
      List<Json> sections = ((Json.Arr) run.json("explanation", plugin)).items();
      assertThat(sections).isNotEmpty();
      for (int i = 0; i < sections.size(); i++) {
        assertThat(run.text("explanation", plugin, i, "title")).isNotBlank();
        assertThat(run.text("explanation", plugin, i, "basis")).isNotBlank();
      }
    }
  }

  @Test
  void theTextShowsFormulaeSourcesAndCautions() {
    CommandLineRun run = CommandLineRun.of("explain", study, "baseline");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("== Barrier ==", "== Cost ==", "Caution: ", "Layers in series", "kWh/1000m²");
  }
}
