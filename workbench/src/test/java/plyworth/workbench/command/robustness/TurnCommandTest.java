package plyworth.workbench.command.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.Json;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

class TurnCommandTest {

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = BrothStudy.in(folder);
  }

  private CommandLineRun turn(String candidate, String input) {
    CommandLineRun run =
        CommandLineRun.of("turn", study, candidate, "--input", input, "--format", "json");
    assertThat(run.code()).isZero();
    return run;
  }

  @Test
  void jsonHasTheDocumentedKeysInTheirOrder() {
    CommandLineRun run = turn("2", "order/packs");
    assertThat(run.keys())
        .startsWith(
            "format",
            "version",
            "study",
            "weighting",
            "ahead",
            "behind",
            "lead",
            "complete",
            "inputs");
    assertThat(run.text("format")).isEqualTo("plyworth turn");
    assertThat(run.keys("inputs", 0))
        .containsExactly(
            "input",
            "kind",
            "unit",
            "present",
            "low",
            "high",
            "lowest",
            "highest",
            "turn",
            "factor",
            "turns",
            "closest",
            "closestLead",
            "from",
            "to",
            "points");
    assertThat(run.number("inputs", 0, "present")).isEqualTo(1_500_000);
  }

  @Test
  void whoLeadsAmongAllJustBeyondIsSaid() {
    CommandLineRun run = turn("2", "ink-wb/price");
    double present = run.number("inputs", 0, "present");
    assertThat(run.number("inputs", 0, "turn")).isGreaterThan(present);
    assertThat(run.number("inputs", 0, "factor"))
        .isCloseTo(run.number("inputs", 0, "turn") / present, offset(1e-8));
    assertThat(run.text("leaderBeyond")).isEqualTo(run.text("behind"));
    assertThat(CommandLineRun.of("turn", study, "2", "--input", "ink-wb/price").out())
        .contains("A leads, by ", "5.5 EUR/kg now, range ", "B overtakes; that is within its range")
        .contains("just beyond ", "leading among all candidates: B");
  }

  @Test
  void aWeightThatTurnsNothingSaysHowNearItComes() {
    CommandLineRun run =
        CommandLineRun.of("turn", study, "2", "--input", "weight:print-method/solvent-emitted");
    assertThat(run.out())
        .contains("no figure looked at lets B overtake", "it comes closest", "closed form");
  }

  @Test
  void withoutAnInputThoseThatTurnTheLeadAreListed() {
    CommandLineRun run =
        CommandLineRun.of(
            "turn",
            study,
            "2",
            "--leave-out",
            "barrier",
            "--leave-out",
            "machinability",
            "--format",
            "json");
    assertThat(run.code()).isZero();
    assertThat(((Json.Arr) run.json("inputs")).items()).isNotEmpty();
    assertThat(run.number("tried")).isGreaterThan(((Json.Arr) run.json("inputs")).items().size());
    assertThat(((Json.Flag) run.json("complete")).flag()).isTrue();
  }

  @Test
  void whatIsNoInputIsRefusedWithTheNearest() {
    CommandLineRun run = CommandLineRun.of("turn", study, "2", "--input", "order/pack");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("\"order/pack\"", "Did you mean \"order/packs\"?");
  }

  @Test
  void aStructureIsNotSetAgainstItself() {
    CommandLineRun run = CommandLineRun.of("turn", study, "1");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("both are the same structure");
  }
}
