package plyworth.workbench.command.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

/** What check and rank say of climate, handling and measurements. */
class BriefTextTest {

  private static final String ZONE =
      "{ \"name\": \"zone II, 25 °C 60 % RH\", \"temperature_C\": 25, \"humidity_percent\": 60 }";

  private static final String MEASURED =
      "\"measurements\": [ { \"criterion\": \"barrier/wvtr\", \"value\": 0.1,"
          + " \"unit\": \"g/(m2.day)\", \"spread\": 2, \"samples\": 3, \"method\": \"ASTM F1249\","
          + " \"date\": \"2026-03-12\" } ], \"positions\":";

  @TempDir Path folder;

  private CommandLineRun run(String command, String text) throws IOException {
    CommandLineRun run = CommandLineRun.of(command, BrothStudy.in(folder, text));
    assertThat(run.err()).isEmpty();
    return run;
  }

  @Test
  void theHeadOfARankingSaysWhereAndHowPacksLie() throws IOException {
    assertThat(run("rank", BrothStudy.text()).out())
        .contains("Climate: zone II, 25 °C 60 % RH, constant")
        .contains("Handling: shipped as usual")
        .doesNotContain("Measured today");
  }

  /** Mean kinetic temperature of half a year at 20 °C and half at 30 °C by USP chapter 1160. */
  @Test
  void seasonsAreSummedUpByTheirMeanKineticTemperature() throws IOException {
    String seasons =
        "{ \"name\": \"island\", \"seasons\": [ { \"days\": 180, \"temperature_C\": 20,"
            + " \"humidity_percent\": 50 }, { \"days\": 180, \"temperature_C\": 30,"
            + " \"humidity_percent\": 70 } ] }";
    assertThat(run("rank", BrothStudy.with(ZONE, seasons)).out())
        .contains("island, a round of 2 seasons, 20 to 30 °C, 50 to 70 % RH")
        .contains("mean kinetic temperature 26.3 °C");
  }

  @Test
  void aNameThatHidesItsFiguresGetsThem() throws IOException {
    assertThat(run("rank", BrothStudy.with("zone II, 25 °C 60 % RH", "store room")).out())
        .contains("Climate: store room, constant 25 °C 60 % RH");
  }

  @Test
  void measurementsAreShownAndCounted() throws IOException {
    String measured = BrothStudy.with("\"positions\":", MEASURED);
    assertThat(run("rank", measured).out())
        .contains("Measured today: barrier/wvtr 0.1 g/(m²·day) ×/÷ 2, 3 samples, ASTM F1249, 2026");
    assertThat(run("check", measured).out()).contains("1 measurement of barrier/wvtr");
    assertThat(run("check", BrothStudy.text()).out()).contains("no measurements");
  }
}
