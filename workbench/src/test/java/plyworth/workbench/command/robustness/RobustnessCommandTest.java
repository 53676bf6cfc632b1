package plyworth.workbench.command.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.command.CommandLineRun;

class RobustnessCommandTest {

  private static final int DRAWS = 30;

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  @Test
  void jsonHasTheDocumentedKeysInTheirOrder() {
    CommandLineRun run =
        CommandLineRun.of("robustness", study, "--format", "json", "--draws", DRAWS);
    assertThat(run.code()).isZero();
    assertThat(run.keys())
        .containsExactly(
            "format",
            "version",
            "study",
            "weighting",
            "leaders",
            "stability",
            "stakeholders",
            "secondOpinions",
            "weightsAlone",
            "acceptability");
    assertThat(run.keys("leaders", 0)).containsExactly("structure", "value", "valueHigh");
    assertThat(run.keys("stability", "barrier/margin"))
        .startsWith("weight", "from", "to")
        .endsWith("tied");
    assertThat(run.keys("stakeholders"))
        .containsExactly(
            "weightings", "weightless", "depth", "candidates", "agreed", "leastRegret");
    assertThat(run.keys("stakeholders", "candidates", 0))
        .containsExactly("structure", "mostLost", "views");
    assertThat(run.keys("stakeholders", "candidates", 0, "views", 0))
        .containsExactly("weighting", "rank", "value");
    assertThat(run.keys("weightsAlone"))
        .containsExactly("weights", "draws", "seed", "everFirst", "everAmongTen", "candidates");
    assertThat(run.keys("weightsAlone", "candidates", 0))
        .containsExactly("structure", "first", "standardError", "amongTen", "centralWeights");
    assertThat(run.keys("acceptability"))
        .containsExactly(
            "weights",
            "draws",
            "seed",
            "precision",
            "precise",
            "compared",
            "whole",
            "everAmongTen",
            "last",
            "lastAmongTen",
            "candidates");
    assertThat(run.keys("acceptability", "candidates", 0))
        .containsExactly(
            "structure",
            "first",
            "standardError",
            "amongThree",
            "amongTen",
            "notRanked",
            "confidence",
            "centralWeights");
  }

  @Test
  void secondOpinionsSayWhomTheyPutFirstAndHowFarTheyAgree() {
    CommandLineRun run = CommandLineRun.of("robustness", study, "--format", "json");
    assertThat(run.text("secondOpinions", 0, "method")).isEqualTo("topsis");
    assertThat(run.text("secondOpinions", 1, "method")).isEqualTo("promethee-ii");
    assertThat(run.keys("secondOpinions", 1))
        .containsExactly("method", "compared", "correlation", "leader", "ranks");
    assertThat(run.number("secondOpinions", 1, "correlation")).isBetween(-1.0, 1.0);
    assertThat(CommandLineRun.of("robustness", study).out())
        .contains("Second opinions on the best 50", "TOPSIS", "PROMETHEE II", "turn two others");
  }

  private CommandLineRun costLed(String command) {
    return CommandLineRun.of(command, study, "--weighting", "cost-led", "--format", "json");
  }

  private CommandLineRun drawn(String weights, int seed) {
    return CommandLineRun.of(
        "robustness", study, "--draws", DRAWS, "--weights", weights, "--seed", seed);
  }

  @Test
  void theSameSeedPrintsTheSame() {
    CommandLineRun run = drawn("any", 4);
    assertThat(run.out()).contains("30 draws, seed 4, any weights").contains("not ranked");
    assertThat(drawn("any", 4).out()).isEqualTo(run.out());
  }

  @Test
  void theSeedOfTheStudyIsUsedUnlessAnotherIsNamed() throws IOException {
    String text = StudyFile.write(SmallStudy.few()).replace("\"seed\": 1,", "\"seed\": 7,");
    Path seeded = Files.writeString(folder.resolve("seeded.study.json"), text);
    CommandLineRun own = CommandLineRun.of("robustness", seeded, "--draws", DRAWS);
    assertThat(own.out()).contains("30 draws, seed 7");
    assertThat(CommandLineRun.of("robustness", study, "--draws", DRAWS, "--seed", 7).out())
        .isEqualTo(own.out());
    CommandLineRun other = CommandLineRun.of("robustness", seeded, "--draws", DRAWS, "--seed", 8);
    assertThat(other.out()).contains("30 draws, seed 8");
  }

  @Test
  void drawsEndAtThePrecisionThatIsAskedForOrAtTheLimit() {
    CommandLineRun loose = CommandLineRun.of("robustness", study, "--precision", "10%");
    assertThat(loose.out())
        .contains("100 draws", "Shares of first place have a standard error of 10 % or less.");
    CommandLineRun tight =
        CommandLineRun.of("robustness", study, "--precision", "0.5 %", "--draws", DRAWS);
    assertThat(tight.out())
        .contains("30 draws", "The limit of draws was reached before", "down to 0.5 %.");
  }

  @Test
  void aPrecisionThatIsNoneOrOutOfBoundsIsRefused() {
    CommandLineRun word = CommandLineRun.of("robustness", study, "--precision", "fine");
    assertThat(word.code()).isEqualTo(2);
    assertThat(word.err()).contains("write a share such as 0.5%, not \"fine\"");
    CommandLineRun zero = CommandLineRun.of("robustness", study, "--precision", "0");
    assertThat(zero.code()).isEqualTo(2);
    assertThat(zero.err()).contains("--precision is 0 %; it must be 0.1 to 20 %");
  }

  @Test
  void withoutDrawsNothingIsSaidOfUncertainInputs() {
    CommandLineRun run = CommandLineRun.of("robustness", study, "--draws", 0, "--format", "json");
    assertThat(run.keys()).doesNotContain("acceptability", "weightsAlone");
  }

  @Test
  void theSharesOfFirstPlaceOfAllCandidatesAddUpToOne() {
    CommandLineRun run =
        CommandLineRun.of(
            "robustness",
            study,
            "--draws",
            1,
            "--weights",
            "any",
            "--top",
            100,
            "--format",
            "json");
    assertThat(run.number("weightsAlone", "draws")).isEqualTo(10_000);
    int first = (int) run.number("weightsAlone", "everFirst");
    assertThat(first).isBetween(1, 100);
    double sum = 0;
    for (int i = 0; i < first; i++) {
      sum += run.number("weightsAlone", "candidates", i, "first");
    }
    assertThat(sum).isCloseTo(1, within(1e-6));
  }

  @Test
  void whereWeightsAreExactNothingIsSaidOfWeightsAlone() {
    assertThat(drawn("exact", 4).out()).doesNotContain("Weights alone uncertain");
    assertThat(drawn("order", 4).out())
        .contains("Weights alone uncertain: 10,000 draws, seed 4, any weights in the order");
  }

  @Test
  void drawsOutOfBoundsAndUnknownWeightsAreRefused() {
    CommandLineRun many = CommandLineRun.of("robustness", study, "--draws", 10_001);
    assertThat(many.code()).isEqualTo(2);
    assertThat(many.err()).contains("--draws is 10001; it must be 0 to 10000");
    CommandLineRun wrong = CommandLineRun.of("robustness", study, "--weights", "equal");
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.err()).contains("write exact, around, order or any, not \"equal\"");
  }

  @Test
  void theLeaderIsThatOfTheRankingUnderTheSameWeighting() {
    CommandLineRun robust =
        CommandLineRun.of(
            "robustness", study, "--weighting", "cost-led", "--format", "json", "--draws", 0);
    CommandLineRun rank =
        CommandLineRun.of("rank", study, "--weighting", "cost-led", "--format", "json");
    assertThat(robust.text("leaders", 0, "structure"))
        .isEqualTo(rank.text("candidates", 0, "structure"));
    assertThat(robust.number("stability", "cost/packed-per-1000", "weight"))
        .isCloseTo(9.0 / 12, within(1e-9));
  }

  @Test
  void theTableNamesEveryWeightEveryWeightingAndTheLeastRegret() {
    CommandLineRun run = CommandLineRun.of("robustness", study, "--top", 2, "--draws", 0);
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("Leader, value 0.")
        .contains("Runner-up, ")
        .contains("the leader stays first")
        .contains("barrier/margin: ")
        .contains("recyclability/class: ")
        .contains("tea room", "cost-led")
        .contains("among the 2 best of every weighting")
        .contains("Least regret of all candidates");
  }

  @Test
  void aDepthOutOfBoundsIsRefused() {
    CommandLineRun run = CommandLineRun.of("robustness", study, "--top", 0);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("--top is 0; it must be 1 to 100");
  }
}
