package plyworth.workbench.command.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.Json;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

class RankCommandTest {

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = BrothStudy.in(folder);
  }

  private static double value(CommandLineRun run, int rank) {
    return run.number("candidates", rank - 1, "value");
  }

  @Test
  void jsonHasTheDocumentedKeysInTheirOrder() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--format", "json", "--top", 3);
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.keys())
        .containsExactly(
            "format",
            "version",
            "study",
            "weighting",
            "counts",
            "search",
            "candidates",
            "bestOfEachKind",
            "proposal",
            "baseline");
    assertThat(run.text("format")).isEqualTo("plyworth rank");
    assertThat(run.number("version")).isEqualTo(1);
    assertThat(run.keys("weighting")).containsExactly("name", "weights", "sharedOut", "by");
    assertThat(run.keys("counts"))
        .containsExactly(
            "candidates", "ranked", "blocked", "excluded", "cannotBeJudged", "complete");
    assertThat(run.keys("candidates", 0))
        .containsExactly("rank", "path", "structure", "value", "valueHigh", "criteria");
    assertThat(run.keys("baseline"))
        .containsExactly(
            "structure",
            "onOffer",
            "objections",
            "standing",
            "value",
            "valueHigh",
            "criteria",
            "findings");
    assertThat(run.keys("baseline", "findings", 0))
        .containsExactly("plugin", "level", "rule", "text", "source");
  }

  private static final String WEIGHTS =
      """
      "weights": {
              "barrier/margin": 3,
              "cost/packed-per-1000": 3,
              "machinability/bending-stiffness": 1,
              "machinability/seal-window": 2,
              "print-method/solvent-emitted": 1,
              "recyclability/class": 2
            }""";

  private CommandLineRun weighedBy(String stated, Object... more) {
    Path changed = BrothStudy.in(folder, BrothStudy.with(WEIGHTS, stated));
    return CommandLineRun.of(
        Stream.concat(Stream.of("rank", changed, "--top", 1), Stream.of(more)).toArray());
  }

  @Test
  void swingPointsAreShownWithTheWeightsThatFollow() {
    String points = "\"swing_points\": { \"barrier/margin\": 100, \"cost/packed-per-1000\": 25 }";
    assertThat(weighedBy(points).out())
        .contains("Weighting \"balanced\", from swing points")
        .containsPattern(" 80\\.0 %  barrier/margin: .*; 100 points")
        .containsPattern(" 20\\.0 %  cost/packed-per-1000: .*; 25 points");
    CommandLineRun json = weighedBy(points, "--format", "json");
    assertThat(json.text("weighting", "by")).isEqualTo("swing-points");
    assertThat(json.number("weighting", "swingPoints", "cost/packed-per-1000")).isEqualTo(25);
    assertThat(json.number("weighting", "weights", "barrier/margin")).isEqualTo(0.8);
  }

  @Test
  void anOrderIsShownWithTheWeightsThatFollow() {
    String order = "\"order\": [ \"cost/packed-per-1000\", \"barrier/margin\" ]";
    assertThat(weighedBy(order).out())
        .contains("Weighting \"balanced\", from the order of importance alone")
        .containsPattern(" 75\\.0 %  cost/packed-per-1000: .*; place 1")
        .containsPattern(" 25\\.0 %  barrier/margin: .*; place 2");
    CommandLineRun json = weighedBy(order, "--format", "json");
    assertThat(json.text("weighting", "by")).isEqualTo("order");
    assertThat(json.text("weighting", "order", 0)).isEqualTo("cost/packed-per-1000");
  }

  @Test
  void aCriterionInAnOrderThatNobodyMeasuresIsSaidWithItsPlace() {
    CommandLineRun run = weighedBy("\"order\": [ \"barrier/margin\", \"cost/pack\" ]");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("weightings[0].order[1]", "no criterion \"pack\"");
  }

  @Test
  void theTableListsTheBestOfEachKindUnlessAllAreAskedFor() {
    String kinds = CommandLineRun.of("rank", study, "--top", 5).out();
    String all = CommandLineRun.of("rank", study, "--top", 5, "--list", "all").out();
    assertThat(kinds).contains("The best of each kind of barrier, printing and sealant");
    assertThat(all).doesNotContain("best of each kind").contains("\n    2  ");
    assertThat(kinds).contains("Proposal", "to trial, value", "fallback");
  }

  @Test
  void jsonHasTheBestOfEachKindAndTheProposalBesideTheCandidates() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--format", "json", "--top", 5);
    assertThat(run.keys("bestOfEachKind", 0))
        .containsExactly("barrier", "printing", "sealant", "rank", "path", "structure", "value");
    assertThat(run.text("bestOfEachKind", 0, "structure"))
        .isEqualTo(run.text("candidates", 0, "structure"))
        .isEqualTo(run.text("proposal", "trials", 0, "structure"));
    assertThat(run.text("proposal", "trials", 0, "reason")).isEqualTo("leads");
  }

  @Test
  void everyCriterionHasValueUnitAndConditions() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--format", "json", "--top", 1);
    for (String criterion : run.keys("candidates", 0, "criteria")) {
      assertThat(criterion).matches("[a-z-]+/[a-z0-9-]+");
      assertThat(run.keys("candidates", 0, "criteria", criterion))
          .startsWith("value", "unit", "conditions");
    }
    assertThat(run.text("candidates", 0, "criteria", "barrier/otr", "unit"))
        .isEqualTo("cm3/(m2.day.bar)");
    assertThat(run.json("candidates", 0, "criteria", "barrier/volatile-loss", "value"))
        .isInstanceOf(Json.Null.class);
    assertThat(run.text("candidates", 0, "criteria", "barrier/volatile-loss", "notApplicable"))
        .isNotBlank();
  }

  @Test
  void contributionsAddUpToTheValueAndValuesFall() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--format", "json", "--top", 47);
    for (int rank = 1; rank <= 47; rank++) {
      double sum = 0;
      for (String weighed : run.keys("weighting", "weights")) {
        sum += run.number("candidates", rank - 1, "criteria", weighed, "contribution");
      }
      assertThat(sum).isCloseTo(value(run, rank), org.assertj.core.data.Offset.offset(1e-8));
      assertThat(rank == 1 || value(run, rank) <= value(run, rank - 1) + 1e-7).isTrue();
    }
  }

  @Test
  void everyCandidateIsCounted() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--format", "json", "--top", 100);
    assertThat(run.number("counts", "candidates")).isEqualTo(132);
    double sum =
        List.of("ranked", "blocked", "excluded", "cannotBeJudged").stream()
            .mapToDouble(group -> run.number("counts", group))
            .sum();
    assertThat(sum).isEqualTo(132);
    assertThat(((Json.Arr) run.json("candidates")).items())
        .hasSize((int) run.number("counts", "ranked"));
  }

  @Test
  void theSameQuestionHasTheSameAnswerToTheLastLetter() {
    CommandLineRun once = CommandLineRun.of("rank", study, "--format", "json", "--top", 20);
    CommandLineRun again = CommandLineRun.of("rank", study, "--format", "json", "--top", 20);
    assertThat(once.out()).isEqualTo(again.out());
  }

  @Test
  void anotherWeightingRanksAnew() {
    CommandLineRun balanced = CommandLineRun.of("rank", study, "--format", "json");
    CommandLineRun costLed =
        CommandLineRun.of("rank", study, "--format", "json", "--weighting", "cost-led");
    assertThat(costLed.text("weighting", "name")).isEqualTo("cost-led");
    assertThat(value(costLed, 1)).isNotEqualTo(value(balanced, 1));
  }

  @Test
  void csvHasAColumnPerCriterionWithItsUnitAndTheBaselineLast() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--format", "csv", "--top", 5);
    List<String> lines = run.out().lines().toList();
    List<String> header = Arrays.asList(lines.get(0).split(","));
    assertThat(header).startsWith("rank", "value", "value high", "structure");
    assertThat(header).contains("barrier/otr [cm3/(m2.day.bar)]", "cost/grammage [g/m2]");
    assertThat(lines).hasSize(7);
    assertThat(lines).allMatch(line -> line.split(",", -1).length == header.size());
    assertThat(lines.get(6)).startsWith("today,");
    int loss = IntStream.range(0, header.size()).filter(i -> header.get(i).contains("-loss")).sum();
    assertThat(lines.get(1).split(",", -1)[loss]).isEmpty();
  }

  @Test
  void theTableIsReadableInOneHundredAndSixtyColumns() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--top", 20, "--front", "--timing");
    assertThat(run.code()).isZero();
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 160);
    assertThat(run.out())
        .contains("132 candidates: 47 ranked, 85 blocked", "Pareto front: ", "candidates/s")
        .contains("Today's structure is free of blocks", "Screening estimates");
  }

  @Test
  void theChartIsWrittenAsPngAndAsSvg() throws IOException {
    Path png = folder.resolve("chart.png");
    Path svg = folder.resolve("chart.svg");
    assertThat(CommandLineRun.of("rank", study, "--chart", png).code()).isZero();
    assertThat(CommandLineRun.of("rank", study, "--chart", svg).code()).isZero();
    assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(2400);
    assertThat(Files.readString(svg, StandardCharsets.UTF_8))
        .contains("<svg", "Broth powder stick", "image/png")
        .doesNotContain("<!DOCTYPE");
  }

  @Test
  void whenNothingIsRankedTheReasonsAreCounted() {
    Path flushed =
        BrothStudy.in(
            folder, BrothStudy.with("\"headspace_percent\": 1 ", "\"headspace_percent\": 21 "));
    CommandLineRun table = CommandLineRun.of("rank", flushed);
    assertThat(table.code()).isZero();
    assertThat(table.out()).contains("No candidate is ranked", "132 of 132: barrier/does-not-keep");
    CommandLineRun json = CommandLineRun.of("rank", flushed, "--format", "json");
    assertThat(json.number("counts", "ranked")).isZero();
    assertThat(json.err()).contains("132 of 132: barrier/does-not-keep");
    CommandLineRun explained = CommandLineRun.of("explain", flushed, "1");
    assertThat(explained.code()).isEqualTo(2);
    assertThat(explained.err()).contains("no candidate is ranked");
  }

  @Test
  void whatCannotCountForThisBriefIsSaidWithItsReason() {
    Path file =
        BrothStudy.in(folder, BrothStudy.with("\"barrier/margin\"", "\"barrier/volatile-loss\""));
    assertThat(CommandLineRun.of("rank", file).out())
        .contains(
            "(25.0 %) barrier/volatile-loss is shared out: The product of this brief holds no");
  }

  @Test
  void whatALimitExcludesIsCounted() {
    String limit =
        "\"limits\": [ { \"criterion\": \"cost/grammage\", \"bound\": \"at-most\","
            + " \"figure\": 1, \"reason\": \"\" } ]";
    Path file = BrothStudy.in(folder, BrothStudy.with("\"limits\": [ ]", limit));
    CommandLineRun run = CommandLineRun.of("rank", file);
    assertThat(run.out()).contains("0 ranked, 85 blocked, 47 excluded by limits");
    assertThat(run.out()).contains("132 of 132: the limit on cost/grammage");
  }

  @Test
  void aBoundedSearchFindsTheSameAndSaysThatItCountsNothing() {
    CommandLineRun table = CommandLineRun.of("rank", study, "--format", "json", "--top", 20);
    CommandLineRun bounded =
        CommandLineRun.of(
            "rank", study, "--format", "json", "--top", 20, "--search", "bounded", "--timing");
    assertThat(bounded.code()).isZero();
    assertThat(bounded.json("candidates").toString())
        .isEqualTo(table.json("candidates").toString());
    assertThat(table.text("search", "way")).isEqualTo("table");
    assertThat(bounded.text("search", "way")).isEqualTo("bounded");
    assertThat(bounded.number("search", "candidatesScored")).isBetween(20.0, 132.0);
    assertThat(bounded.number("counts", "candidates")).isEqualTo(132);
    assertThat(List.of("ranked", "blocked", "excluded", "cannotBeJudged"))
        .allMatch(group -> bounded.json("counts", group) instanceof Json.Null);
    assertThat(bounded.err()).contains("regions opened", "ready to search");
  }

  @Test
  void theTableOfABoundedSearchSaysWhatWasNotCounted() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--search", "bounded", "--timing");
    assertThat(run.out())
        .contains("132 candidates. The best were found by a bounded search", "was not counted")
        .contains("its rank was not counted", "candidates scored", " pops, ", " pushes, ", " MiB")
        .doesNotContain(" 0 ranked");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 160);
    Path png = folder.resolve("chart.png");
    assertThat(CommandLineRun.of("rank", study, "--search", "bounded", "--chart", png).code())
        .isZero();
  }

  @Test
  void aBoundedSearchHasNoFrontAndSaysSo() {
    CommandLineRun run = CommandLineRun.of("rank", study, "--search", "bounded", "--front");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("--front", "a bounded search makes none");
    assertThat(CommandLineRun.of("rank", study, "--search", "quick").err())
        .contains("write table or bounded, not \"quick\"");
  }

  @Test
  void aBoundedSearchThatFindsNothingSaysWhatKeepsCandidatesOut() {
    Path flushed =
        BrothStudy.in(
            folder, BrothStudy.with("\"headspace_percent\": 1 ", "\"headspace_percent\": 21 "));
    assertThat(CommandLineRun.of("rank", flushed, "--search", "bounded").out())
        .contains("No candidate is ranked", "132 of 132: barrier/does-not-keep");
  }
}
