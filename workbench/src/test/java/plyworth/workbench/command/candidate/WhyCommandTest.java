package plyworth.workbench.command.candidate;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.Json;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

class WhyCommandTest {

  private static final String THICK_FOIL =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 50 g/m2"
          + " / ldpe 12 um @extrusion-lamination / aluminium-foil 9 um !bright-out"
          + " / ldpe 25 um @extrusion-coating";

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = BrothStudy.in(folder);
  }

  private CommandLineRun why(String structure) {
    CommandLineRun run =
        CommandLineRun.of("why", study, "--structure", structure, "--format", "json");
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    return run;
  }

  @Test
  void jsonHasTheDocumentedKeysInTheirOrder() {
    CommandLineRun run = why(THICK_FOIL);
    assertThat(run.keys())
        .containsExactly(
            "format",
            "version",
            "study",
            "weighting",
            "structure",
            "onOffer",
            "path",
            "standing",
            "rank",
            "value",
            "objections",
            "admission",
            "hindrances",
            "oneLimitSuffices",
            "nearest",
            "nearestRanked");
    assertThat(run.text("format")).isEqualTo("plyworth why");
    assertThat(run.keys("admission")).containsExactly("offer", "lift");
    assertThat(run.keys("nearest", 0))
        .containsExactly("path", "structure", "standing", "value", "edits");
    assertThat(run.keys("nearest", 0, "edits", 0))
        .containsExactly("kind", "layer", "before", "after");
  }

  @Test
  void anotherGaugeIsOneOptionAndOneEditAway() {
    CommandLineRun run = why(THICK_FOIL);
    assertThat(run.number("admission", "offer", 0, "position")).isEqualTo(3);
    assertThat(run.text("admission", "offer", 0, "title")).isEqualTo("Barrier web");
    assertThat(run.text("admission", "offer", 0, "option"))
        .isEqualTo("aluminium-foil 9 um !bright-out");
    assertThat(run.text("nearest", 0, "edits", 0, "kind")).isEqualTo("adjust");
    assertThat(run.text("nearest", 0, "edits", 0, "after"))
        .isEqualTo("aluminium-foil 7 um !bright-out");
    assertThat(run.text("nearestRanked", "standing")).isEqualTo("ranked");
  }

  @Test
  void aRankedCandidateHasThePathAndTheRankThatTheRankingGivesIt() {
    CommandLineRun ranked = CommandLineRun.of("rank", study, "--format", "json", "--top", 7);
    CommandLineRun run = why(ranked.text("candidates", 6, "structure"));
    assertThat(((Json.Flag) run.json("onOffer")).flag()).isTrue();
    assertThat(run.number("path")).isEqualTo(ranked.number("candidates", 6, "path"));
    assertThat(run.number("rank")).isEqualTo(7);
    assertThat(run.number("value")).isEqualTo(ranked.number("candidates", 6, "value"));
  }

  @Test
  void aLimitIsSaidWithTheFigureAndWhatItWouldHaveToAllow() {
    BrothStudy.in(
        folder,
        BrothStudy.with(
            "\"limits\": [ ]",
            "\"limits\": [ { \"criterion\": \"machinability/bending-stiffness\","
                + " \"bound\": \"at-most\", \"figure\": 0.2, \"reason\": \"Old former.\" } ]"));
    CommandLineRun json = why("baseline");
    assertThat(json.text("standing")).isEqualTo("excluded");
    assertThat(json.keys("hindrances", 0))
        .containsExactly(
            "kind", "criterion", "bound", "limit", "unit", "reason", "value", "relaxedTo");
    assertThat(json.number("hindrances", 0, "relaxedTo"))
        .isGreaterThanOrEqualTo(json.number("hindrances", 0, "value"));
    assertThat(CommandLineRun.of("why", study, "--structure", "baseline").out())
        .contains("On offer: path ", "excluded by a limit")
        .contains("the limit allows at most 0.2 N·mm (Old former.)")
        .contains("That limit alone keeps it out.");
  }

  @Test
  void theTextNamesPositionsRulesAndBlocks() {
    String text =
        CommandLineRun.of(
                "why", study, "--structure", "kraft-paper 45 g/m2 / ldpe 25 um @extrusion-coating")
            .out();
    assertThat(text)
        .contains("Not on offer:")
        .contains("offer at \"Outer web\" also: kraft-paper 45 g/m2")
        .contains("lift the rule a-print: The pack carries print")
        .contains("On offer, it would still be kept out of the ranking:", "barrier/does-not-keep")
        .contains("The nearest candidates on offer:", "becomes kraft-paper 40 g/m2")
        .contains("The nearest that is ranked:");
  }

  @Test
  void anUnknownMaterialIsRefusedByName() {
    CommandLineRun run =
        CommandLineRun.of("why", study, "--structure", "kraft-paper 50 g/m2 / aluminum-foil 7 um");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("aluminum-foil").contains("Did you mean \"aluminium-foil\"?");
  }
}
