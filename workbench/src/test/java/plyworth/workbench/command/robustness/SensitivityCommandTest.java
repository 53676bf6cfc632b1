package plyworth.workbench.command.robustness;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.Json;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

class SensitivityCommandTest {

  private static final String COST = "cost/packed-per-1000";

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = BrothStudy.in(folder);
  }

  private CommandLineRun of(String candidate, Object... more) {
    Object[] arguments = new Object[more.length + 5];
    System.arraycopy(
        new Object[] {"sensitivity", study, candidate, "--samples", 16}, 0, arguments, 0, 5);
    System.arraycopy(more, 0, arguments, 5, more.length);
    return CommandLineRun.of(arguments);
  }

  @Test
  void jsonHasTheDocumentedKeysInTheirOrder() {
    CommandLineRun run = of("baseline", "--criterion", COST, "--format", "json");
    assertThat(run.code()).isZero();
    assertThat(run.keys())
        .containsExactly(
            "format",
            "version",
            "study",
            "weighting",
            "structure",
            "criterion",
            "typical",
            "mean",
            "standardDeviation",
            "basePoints",
            "unknownPoints",
            "scored",
            "seed",
            "inputs",
            "held");
    assertThat(run.keys("inputs", 0))
        .containsExactly(
            "input", "name", "unit", "low", "typical", "high", "tabulated", "firstOrder", "total");
    assertThat(run.keys("inputs", 0, "total")).containsExactly("index", "low", "high");
    List<Json> inputs = ((Json.Arr) run.json("inputs")).items();
    assertThat(run.number("scored")).isEqualTo(16 * (inputs.size() + 2));
  }

  @Test
  void inputsAreNamedByMaterialAndPropertyWithTheirRange() {
    CommandLineRun run = of("baseline", "--criterion", COST);
    assertThat(run.out())
        .contains(
            "Aluminium foil, soft: price", "EUR/kg", "typical", "in all", "16 base points, seed 1");
  }

  @Test
  void withoutACriterionItIsTheValueUnderTheWeighting() {
    List<String> left = List.of("barrier", "recyclability", "print-method", "machinability");
    Object[] costAlone = left.stream().flatMap(id -> Stream.of("--leave-out", id)).toArray();
    assertThat(of("baseline", costAlone).out()).contains("value under the weighting \"balanced\"");
    Object[] costLed =
        Stream.concat(
                Stream.of(costAlone), Stream.of("--weighting", "cost-led", "--format", "json"))
            .toArray();
    CommandLineRun other = of("baseline", costLed);
    assertThat(other.text("weighting")).isEqualTo("cost-led");
    assertThat(other.keys()).doesNotContain("criterion");
  }

  @Test
  void theSameSeedPrintsTheSameAndAnotherAnother() {
    String once = of("baseline", "--criterion", COST, "--seed", 3).out();
    assertThat(of("baseline", "--criterion", COST, "--seed", 3).out()).isEqualTo(once);
    assertThat(of("baseline", "--criterion", COST, "--seed", 4).out()).isNotEqualTo(once);
  }

  @Test
  void samplesAreRoundedUpToAPowerOfTwo() {
    CommandLineRun run =
        CommandLineRun.of(
            "sensitivity",
            study,
            "baseline",
            "--criterion",
            COST,
            "--samples",
            20,
            "--format",
            "json");
    assertThat(run.number("basePoints")).isEqualTo(32);
  }

  @Test
  void aCriterionThatNothingMovesSaysSo() {
    assertThat(of("baseline", "--criterion", "barrier/light").out())
        .contains("No uncertain input moves it.");
  }

  @Test
  void whatCannotBeLookedIntoIsRefused() {
    CommandLineRun unknown = of("1", "--criterion", "barrier/ort");
    assertThat(unknown.code()).isEqualTo(2);
    assertThat(unknown.err())
        .contains("--criterion: no plugin measures \"barrier/ort\"", "\"barrier/otr\"");
    CommandLineRun moot = of("1", "--criterion", "barrier/volatile-loss");
    assertThat(moot.code()).isEqualTo(2);
    assertThat(moot.err()).contains("no figure of barrier/volatile-loss; not applicable: ");
    CommandLineRun few = CommandLineRun.of("sensitivity", study, "1", "--samples", 3);
    assertThat(few.code()).isEqualTo(2);
    assertThat(few.err()).contains("--samples is 3; it must be 16 to 65536");
  }
}
