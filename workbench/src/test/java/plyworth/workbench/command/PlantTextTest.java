package plyworth.workbench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What the commands tell of a plant, on the study that has one. */
class PlantTextTest {

  private static final Path STUDY = Path.of("../studies/sugar-stick.study.json");

  private static final String NOT_APPROVED =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / barrier-paper-high 75 g/m2"
          + " / ldpe 15 um @extrusion-coating";

  @Test
  void checkTellsWhatIsInThePlant() {
    CommandLineRun run = CommandLineRun.of("check", STUDY);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("; plant: Works of the converter", "4 machines, 2 services");
  }

  @Test
  void rankCountsWhatCannotBeMade() {
    CommandLineRun table = CommandLineRun.of("rank", STUDY, "--top", 1);
    CommandLineRun json = CommandLineRun.of("rank", STUDY, "--top", 1, "--format", "json");
    double count = json.number("counts", "notMakeable");
    assertThat(count).isBetween(1.0, json.number("counts", "blocked"));
    assertThat(table.out().replaceAll("\\s+", " "))
        .contains(String.format(Locale.ROOT, "%,d cannot be made in the", (long) count))
        .contains("Plant: Works of the converter at the canal");
  }

  @Test
  void whyNamesTheReason() {
    CommandLineRun run = CommandLineRun.of("why", STUDY, "--structure", NOT_APPROVED);
    assertThat(run.out())
        .contains("Not makeable: barrier-paper-high 75 g/m2 is on offer, but from nobody")
        .contains("supply/web-not-approved");
  }

  @Test
  void explainShowsTheRouteAndTheWebs() {
    CommandLineRun run = CommandLineRun.of("explain", STUDY, "baseline");
    assertThat(run.out())
        .contains("Route in the plant: Works of the converter at the canal")
        .contains("Rotogravure, solvent-based  Gravure printer in the next valley")
        .contains("Webs to be bought");
  }
}
