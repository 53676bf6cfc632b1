package plyworth.workbench.command.candidate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.Json;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

class CompareCommandTest {

  private static final String PLAIN = "kraft-paper 50 g/m2 / ldpe 25 um @extrusion-coating";

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = BrothStudy.in(folder);
  }

  @Test
  void theBaselineStandsFirstAndRanksAreThoseOfTheRanking() {
    CommandLineRun ranked = CommandLineRun.of("rank", study, "--format", "json", "--top", 3);
    CommandLineRun run = CommandLineRun.of("compare", study, "3", "1", PLAIN, "--format", "json");
    assertThat(run.code()).isZero();
    assertThat(run.keys()).containsExactly("format", "version", "study", "weighting", "structures");
    assertThat(run.text("structures", 0, "structure"))
        .isEqualTo(ranked.text("baseline", "structure"));
    assertThat(run.text("structures", 1, "name")).isEqualTo("rank 3");
    assertThat(run.text("structures", 1, "structure"))
        .isEqualTo(ranked.text("candidates", 2, "structure"));
    assertThat(run.text("structures", 2, "structure"))
        .isEqualTo(ranked.text("candidates", 0, "structure"));
    assertThat(run.text("structures", 3, "name")).isEqualTo("A");
    assertThat(run.text("structures", 3, "structure")).isEqualTo(PLAIN);
  }

  @Test
  void gainsAddUpToTheDifferenceOfTheValues() {
    CommandLineRun run = CommandLineRun.of("compare", study, "1", PLAIN, "--format", "json");
    for (int i = 1; i <= 2; i++) {
      double sum = 0;
      for (String criterion : run.keys("structures", i, "gainedAgainstToday")) {
        sum += run.number("structures", i, "gainedAgainstToday", criterion);
      }
      double difference =
          run.number("structures", i, "value") - run.number("structures", 0, "value");
      assertThat(sum).isCloseTo(difference, within(1e-7));
    }
    assertThat(((Json.Obj) run.json("structures", 0)).entries())
        .doesNotContainKey("gainedAgainstToday");
  }

  @Test
  void theTextShowsFiguresGainsAndWhatStandsInTheWay() {
    CommandLineRun run = CommandLineRun.of("compare", study, "1", "2", PLAIN);
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("today: ", "rank 1: ", "A: " + PLAIN)
        .contains("barrier/otr, cm³/(m²·day·bar)", "rank 1 against today +")
        .contains("not on offer: ", "blocks: ", "Screening estimates");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 160);
  }

  @Test
  void whatCannotBeComparedIsRefused() {
    CommandLineRun nothing = CommandLineRun.of("compare", study, "baseline");
    assertThat(nothing.code()).isEqualTo(2);
    assertThat(nothing.err()).contains("only today's structure is named");
    Object[] many = {"compare", study, 1, 2, 3, 4, 5, 6, 7, 8, 9};
    assertThat(CommandLineRun.of(many).err()).contains("at most 8 candidates", "not 9");
    assertThat(CommandLineRun.of("compare", study, "48").err())
        .contains("there is no such rank: 47 candidates are ranked");
    assertThat(CommandLineRun.of("compare", study).code()).isEqualTo(2);
  }
}
