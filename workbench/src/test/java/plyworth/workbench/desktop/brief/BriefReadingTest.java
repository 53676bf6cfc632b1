package plyworth.workbench.desktop.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.ClimateZones;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Ranked;

/** What the form of a brief makes of what is typed into it. */
class BriefReadingTest {

  private static final Study MINT = SmallStudy.few();
  private static final BriefDraft DRAFT = BriefDraft.of(MINT);

  static Stream<Study> studies() {
    Climate months =
        new Climate(
            "port town",
            Stream.iterate(10.5, celsius -> celsius + 1.7)
                .limit(12)
                .map(celsius -> new Climate.Season(365.0 / 12, celsius, 70.25))
                .toList());
    Climate seasons =
        new Climate(
            "monsoon", List.of(new Climate.Season(120, 30, 85), new Climate.Season(245, 24.5, 55)));
    return Stream.concat(
        Stream.of("sugar-stick", "seasoning-stick", "isopropanol-wipe", "freeze-dried-snack")
            .map(name -> StudyFile.open(Path.of("../studies", name + StudyFile.SUFFIX)).study()),
        Stream.of(
            MINT,
            MINT.with(MINT.brief().in(months)),
            MINT.with(MINT.brief().in(seasons)),
            MINT.with(MINT.brief().in(new Climate("shop", 23, 50)))));
  }

  @ParameterizedTest
  @MethodSource("studies")
  void theFormOfAStudySaysExactlyThatStudy(Study study) {
    BriefReading reading = BriefReading.of(BriefDraft.of(study), study);
    assertThat(reading.faults()).isEmpty();
    assertThat(reading.study()).contains(study);
  }

  private static Map<BriefField, String> faults(BriefField field, String text) {
    return BriefReading.of(DRAFT.with(field, text), MINT).faults();
  }

  private static Brief brief(BriefDraft draft) {
    return BriefReading.of(draft, MINT).study().orElseThrow().brief();
  }

  /** Factors of NIST Special Publication 811, appendix B (from memory). */
  @ParameterizedTest
  @CsvSource({
    "PACK_WIDTH, 1 in, 25.4",
    "PACK_WIDTH, 2.5 cm, 25",
    "PRODUCT_MASS, 1 oz, 28.349523125",
    "SHELF_LIFE, 6 months, 182.5",
    "SHELF_LIFE, 2 years, 730",
    "SHELF_LIFE, 26 weeks, 182",
    "JAW, 302 °F, 150",
    "ORDER_SIZE, 2 000 000, 2000000",
    "ORDER_SIZE, 0.5 million, 500000",
    "HEADSPACE, 1 fl oz, 29.5735295625",
    "FEED, 100 ft/min, 0.508",
    "CONTACT, 500 BTU/(h·ft²·°F), 2839.1315",
    "JAW_SPREAD, 9 °F, 5",
    "PACK_WIDTH, ２５ mm, 25",
    "HEADSPACE, 1 cm3, 1",
    "CONTACT, 3000 W/(m2·K), 3000",
    "SHELF_LIFE, 2 年, 730"
  })
  void figuresAreTakenInTheUnitTheyAreTypedIn(BriefField field, String typed, double inside) {
    BriefAnswers answers = new BriefAnswers(DRAFT.with(field, typed));
    assertThat(answers.figure(field)).isEqualTo(inside);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TITLE | '' | Write it here",
        "PACK_WIDTH | '' | for example 10 mm",
        "PACK_WIDTH | wide | \"wide\" is no figure",
        "PACK_WIDTH | 2,5 | Write a point",
        "PACK_WIDTH | 25 furlong | mm, cm, in",
        "PACK_WIDTH | -3 | greater than 0 mm",
        "LANES | 2.5 | whole number",
        "JAW | 500 °F | fine",
        "JAW | 400 | between 20 °C and 350 °C",
        "EFFICIENCY | 120 % | and 100 %",
        "SEAL_WIDTH | 60 | 120 mm",
        "END_YEAR | 2020 | 2027",
        "MOTHER_WEB | 40 | one lane of 57 mm",
        "REGION | Europe! | lower case",
        "DEADLINE | soon | no figure",
        "BASELINE | kraft-paper 50 | material amount unit",
        "BASELINE | kraft-papr 50 g/m2 | Did you mean",
        "INITIAL_ACTIVITY | 1.2 | between 0 and 1"
      })
  void whatIsWrongIsSaidBesideTheFieldWithWhatWouldBeRight(
      BriefField field, String typed, String said) {
    Map<BriefField, String> faults = faults(field, typed);
    if (said.equals("fine")) {
      assertThat(faults).isEmpty();
    } else {
      assertThat(faults).containsOnlyKeys(field);
      assertThat(faults.get(field)).contains(said);
    }
  }

  @Test
  void aFaultInAMonthNamesItsLine() {
    String lines = "18, 70\n".repeat(4) + "18 70\n" + "18, 70\n".repeat(7);
    BriefDraft months =
        DRAFT
            .with(BriefField.CLIMATE, "months")
            .with(BriefField.CLIMATE_NAME, "port town")
            .with(BriefField.MONTHS, lines);
    assertThat(BriefReading.of(months, MINT).faults().get(BriefField.MONTHS))
        .contains("Month 5: write 2 figures");
    String gap = "18\t70\n".repeat(5) + "\n" + "18\t70\n".repeat(6);
    assertThat(faultOf(months.with(BriefField.MONTHS, gap))).contains("Month 6 is empty");
    String half = "18\t70\n".repeat(6) + "\t70\n" + "18,5\t70\n".repeat(5);
    assertThat(faultOf(months.with(BriefField.MONTHS, half)))
        .contains("Month 7: Temperature: Write a figure");
    assertThat(faultOf(months.with(BriefField.MONTHS, ""))).contains("0 months");
    Climate pasted = brief(months.with(BriefField.MONTHS, "64.4 °F\t70 %\n".repeat(12))).climate();
    assertThat(pasted.seasons()).hasSize(12).allMatch(s -> s.temperatureC() == 18);
    assertThat(
            BriefReading.of(months.with(BriefField.MONTHS, "18, 70\n18, 70"), MINT)
                .faults()
                .get(BriefField.MONTHS))
        .contains("2 months");
  }

  private static String faultOf(BriefDraft months) {
    return BriefReading.of(months, MINT).faults().get(BriefField.MONTHS);
  }

  @Test
  void aZoneIsThatOfTheGuideline() {
    BriefDraft zone = DRAFT.with(BriefField.CLIMATE, "zone").with(BriefField.ZONE, "IVb");
    assertThat(brief(zone).climate()).isEqualTo(ClimateZones.require("IVb"));
  }

  @Test
  void aMoistureIsTheWaterActivityAtWhichTheIsothermHoldsIt() {
    MoistureLimit before = MINT.brief().product().moisture().orElseThrow();
    double held = before.isotherm(23).moisture(0.4);
    BriefDraft typed = DRAFT.with(BriefField.CRITICAL_ACTIVITY, 100 * held + " %");
    assertThat(brief(typed).product().moisture().orElseThrow().criticalActivity())
        .isCloseTo(0.4, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(faults(BriefField.CRITICAL_ACTIVITY, "900 %"))
        .hasEntrySatisfying(
            BriefField.CRITICAL_ACTIVITY, said -> assertThat(said).contains("never holds"));
  }

  @Test
  void aProductOfTheLibraryIsRefusedBeyondWhatItsIsothermHoldsFor() {
    BriefDraft coffee =
        DRAFT
            .with(BriefField.SORPTION, "library")
            .with(BriefField.KNOWN_PRODUCT, "roasted-ground-coffee")
            .with(BriefField.INITIAL_ACTIVITY, "0.2")
            .with(BriefField.CRITICAL_ACTIVITY, "0.99");
    assertThat(BriefReading.of(coffee, MINT).faults())
        .containsOnlyKeys(BriefField.CRITICAL_ACTIVITY);
  }

  @Test
  void deadlineAndTargetPriceAreLimits() {
    BriefDraft typed =
        DRAFT
            .with(BriefField.DEADLINE, "9 weeks")
            .with(BriefField.PRICE, "7")
            .with(BriefField.PRICE_OF, "price-per-1000");
    Study study = BriefReading.of(typed, MINT).study().orElseThrow();
    assertThat(study.limits())
        .containsExactly(
            new Limit("supply/lead-time", Limit.Bound.AT_MOST, 63, ""),
            new Limit("cost/price-per-1000", Limit.Bound.AT_MOST, 7, ""));
    BriefDraft packed =
        BriefDraft.of(study)
            .with(BriefField.DEADLINE, "")
            .with(BriefField.PRICE_OF, "packed-per-1000");
    assertThat(BriefReading.of(packed, study).study().orElseThrow().limits())
        .containsExactly(new Limit("cost/packed-per-1000", Limit.Bound.AT_MOST, 7, ""));
  }

  @Test
  void limitsThatTheFormDoesNotAskForStayWhereTheyAre() {
    Study sugar = StudyFile.open(Path.of("../studies/sugar-stick.study.json")).study();
    BriefDraft later = BriefDraft.of(sugar).with(BriefField.DEADLINE, "70");
    List<Limit> limits = BriefReading.of(later, sugar).study().orElseThrow().limits();
    assertThat(limits).hasSameSizeAs(sugar.limits());
    assertThat(limits).containsAll(sugar.limits().subList(0, 2));
    assertThat(limits.get(2).figure()).isEqualTo(70);
    assertThat(limits.get(2).reason()).isEqualTo(sugar.limits().get(2).reason());
  }

  @Test
  void theStandardLaminateIsRankedAndNeedsNothingButATitle() {
    Study laminate = PaperLaminate.study();
    BriefReading untitled = BriefReading.of(BriefDraft.of(laminate), laminate);
    assertThat(untitled.faults()).containsOnlyKeys(BriefField.TITLE);
    Ranked ranked = SmallStudy.ranked(laminate);
    assertThat(ranked.best()).isNotEmpty();
    assertThat(ranked.baseline().valuation().value()).isPositive();
  }

  @Test
  void whatWasTypedStaysWhenAnotherStudyIsBegunWith() {
    BriefDraft typed = DRAFT.with(BriefField.PACK_WIDTH, "31 mm");
    BriefDraft other = BriefDraft.of(PaperLaminate.study()).keeping(typed, DRAFT);
    assertThat(other.text(BriefField.PACK_WIDTH)).isEqualTo("31 mm");
    assertThat(other.text(BriefField.LANES)).isEqualTo("8");
  }
}
