package plyworth.workbench.command.candidate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.Json;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

/** Figures of laminates whose figures are known from elsewhere, through the JSON interface. */
class ScoreCommandTest {

  private static final String FOIL_LAMINATE =
      "kraft-paper 50 g/m2 / ldpe 15 um @extrusion-lamination / aluminium-foil 7 um"
          + " / ldpe 25 um @extrusion-coating";

  @TempDir Path folder;
  private Path study;

  @BeforeEach
  void studyIsThere() {
    study = BrothStudy.in(folder);
  }

  private CommandLineRun score(String structure) {
    CommandLineRun run =
        CommandLineRun.of("score", study, "--structure", structure, "--format", "json");
    assertThat(run.code()).isZero();
    return run;
  }

  private double figure(String structure, String criterion) {
    return score(structure).number("criteria", criterion, "value");
  }

  /** Analytic: 50 + 15 · 0.92 + 7 · 2.70 + 25 · 0.92, and its reciprocal. */
  @Test
  void grammageAndYieldOfAFoilLaminate() {
    assertThat(figure(FOIL_LAMINATE, "cost/grammage")).isCloseTo(105.7, offset(1e-6));
    assertThat(figure(FOIL_LAMINATE, "cost/yield")).isCloseTo(9.46074, withPercentage(0.01));
  }

  /** Analytic: PET 12 (1.40) at the same place: 50 + 13.8 + 16.8 + 23. */
  @Test
  void grammageWithMetallisedPolyesterInPlaceOfFoil() {
    String structure = FOIL_LAMINATE.replace("aluminium-foil 7 um", "bopet-met 12 um");
    assertThat(figure(structure, "cost/grammage")).isCloseTo(103.6, offset(1e-6));
  }

  /**
   * Parallel-axis theorem over layers of 60, 12, 7 and 30 µm with 6000, 200, 69000 and 130 MPa;
   * confirmed by numerical integration over the thickness (0.543122).
   */
  @Test
  void bendingStiffnessOfPaperFoilLaminate() {
    String structure =
        "kraft-paper 60 um / ldpe 12 um @extrusion-lamination / aluminium-foil 7 um"
            + " / eaa 30 um @extrusion-coating";
    assertThat(figure(structure, "machinability/bending-stiffness"))
        .isCloseTo(0.54312, withPercentage(0.1));
    assertThat(figure(structure, "machinability/tensile-stiffness"))
        .isCloseTo(849.3, withPercentage(0.1));
  }

  /** Analytic: resistances in series, 12/1600 + 3/40000 + 50/190000. */
  @Test
  void oxygenThroughLayersInSeries() {
    String structure = "bopet 12 um / adhesive-pu-solvent 3 um @dry-bond / ldpe 50 um";
    assertThat(figure(structure, "barrier/otr")).isCloseTo(127.581, withPercentage(0.01));
  }

  @Test
  void jsonHasTheDocumentedKeysInTheirOrder() {
    CommandLineRun run = score(FOIL_LAMINATE);
    assertThat(run.keys())
        .containsExactly(
            "format",
            "version",
            "study",
            "structure",
            "onOffer",
            "objections",
            "standing",
            "value",
            "valueHigh",
            "criteria",
            "findings",
            "ranges",
            "explanation");
    assertThat(run.text("format")).isEqualTo("plyworth score");
    assertThat(run.keys("objections", 0)).containsExactly("rule", "reason", "source");
    assertThat(run.keys("ranges", "barrier/otr")).containsExactly("low", "typical", "high");
    assertThat(run.keys("explanation"))
        .containsExactlyInAnyOrder(
            "barrier", "cost", "machinability", "print-method", "recyclability", "supply");
  }

  @Test
  void theRangeHoldsTheFigureAndRepeats() {
    CommandLineRun run = score(FOIL_LAMINATE);
    assertThat(run.number("ranges", "barrier/wvtr", "low"))
        .isLessThan(run.number("criteria", "barrier/wvtr", "value"));
    assertThat(run.number("ranges", "barrier/wvtr", "typical"))
        .isEqualTo(run.number("criteria", "barrier/wvtr", "value"));
    assertThat(score(FOIL_LAMINATE).out()).isEqualTo(run.out());
  }

  @Test
  void numbersHaveNineSignificantDigitsAtMost() {
    List<Double> numbers = numbers(score(FOIL_LAMINATE).json()).toList();
    assertThat(numbers).hasSizeGreaterThan(200);
    assertThat(numbers)
        .allMatch(n -> n == 0 || BigDecimal.valueOf(n).stripTrailingZeros().precision() <= 9);
  }

  private static Stream<Double> numbers(Json json) {
    if (json instanceof Json.Obj object) {
      return object.entries().values().stream().flatMap(ScoreCommandTest::numbers);
    } else if (json instanceof Json.Arr array) {
      return array.items().stream().flatMap(ScoreCommandTest::numbers);
    }
    return json instanceof Json.Num number ? Stream.of(number.number()) : Stream.empty();
  }

  @Test
  void aCandidateScoresAsItIsRanked() {
    CommandLineRun ranked = CommandLineRun.of("rank", study, "--format", "json", "--top", 1);
    CommandLineRun scored = score(ranked.text("candidates", 0, "structure"));
    assertThat(((Json.Flag) scored.json("onOffer")).flag()).isTrue();
    assertThat(scored.number("value")).isEqualTo(ranked.number("candidates", 0, "value"));
    for (String weighed : ranked.keys("weighting", "weights")) {
      assertThat(scored.number("criteria", weighed, "value"))
          .isEqualTo(ranked.number("candidates", 0, "criteria", weighed, "value"));
    }
  }

  @Test
  void missingDataIsNamed() {
    CommandLineRun run = score("evoh-44 20 um");
    assertThat(run.err()).isEmpty();
    Object[] window = {"criteria", "machinability/seal-window"};
    assertThat(run.text(window[0], window[1], "missing", "subject")).isEqualTo("evoh-44");
    assertThat(run.text(window[0], window[1], "missing", "property")).isEqualTo("seal-initiation");
    assertThat(run.json(window[0], window[1], "value")).isInstanceOf(Json.Null.class);
    assertThat(CommandLineRun.of("score", study, "--structure", "evoh-44 20 um").out())
        .contains("unknown: evoh-44 has no seal-initiation");
  }

  @Test
  void theTextSaysWhyAStructureIsNotOnOffer() {
    CommandLineRun run = CommandLineRun.of("score", study, "--structure", FOIL_LAMINATE);
    assertThat(run.out()).contains("not on offer: The pack carries print", "[a-print;");
    assertThat(run.out()).contains("cm³/(m²·day·bar)", "Ranges: middle 90 %");
  }

  @Test
  void inchPoundUnitsAreUnderstood() {
    assertThat(
            figure("kraft-paper 30.7224 lb/3000ft2 / ldpe 1 mil @extrusion-coating", "cost/gauge"))
        .isCloseTo(50_000 / 850.0 + 25.4, withPercentage(0.01));
  }
}
