package plyworth.workbench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands tell of a plant, on the study that has one. */
class PlantTextTest {

  private static final Path STUDY = Path.of("../studies/sugar-stick.study.json");

  private static final String NOT_APPROVED =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / barrier-paper-high 75 g/m2"
          + " / ldpe 15 um @extrusion-coating";

  @TempDir Path folder;

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

  @Test
  void aPlantOfItsOwnFileStandsInPlaceOfTheStudysOwn() throws IOException {
    Path other = plant("Works on the hill", "kraft-paper");
    CommandLineRun check = CommandLineRun.of("check", STUDY, "--plant", other);
    assertThat(check.out()).contains("; plant: Works on the hill, 2 machines, 0 services, 1 web");
    CommandLineRun rank = CommandLineRun.of("rank", STUDY, "--plant", other);
    assertThat(rank.out()).contains("Plant: Works on the hill");
    CommandLineRun snack =
        CommandLineRun.of(
            "why",
            "../studies/freeze-dried-snack.study.json",
            "--plant",
            other,
            "--structure",
            NOT_APPROVED);
    assertThat(snack.out()).contains("is not among the webs that Works on the hill can buy");
  }

  @Test
  void whatIsWrongInAPlantFileIsSaidWithItsPlace() throws IOException {
    CommandLineRun wrong =
        CommandLineRun.of("rank", STUDY, "--plant", plant("Works on the hill", "kraft-papper"));
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.err())
        .contains("works.plant.json", "line 10", "at plant.webs[0].material")
        .contains("Did you mean \"kraft-paper\"?");
    CommandLineRun absent = CommandLineRun.of("rank", STUDY, "--plant", folder.resolve("no.json"));
    assertThat(absent.code()).isEqualTo(2);
    assertThat(absent.err()).contains("does not exist");
  }

  private Path plant(String name, String material) throws IOException {
    String text =
        """
        {
          "schema": 6,
          "plant": {
            "name": "%s",
            "machines": [
              { "id": "press", "name": "Press", "processes": [ "flexo-water" ], "web_width_mm": { "from": 500, "to": 1300 }, "print_stations": 8, "solvents": false, "days": 2 },
              { "id": "slitter", "name": "Slitter", "processes": [ "slitting" ], "web_width_mm": { "from": 300, "to": 1300 }, "solvents": false, "days": 1 }
            ],
            "webs": [
              { "material": "%s", "widths_mm": [ { "from": 400, "to": 1300 } ], "gauges": [ "50 g/m2" ], "minimum_order_kg": 0, "lead_days": 7, "approved": true }
            ]
          }
        }
        """;
    return Files.writeString(folder.resolve("works.plant.json"), text.formatted(name, material));
  }
}
