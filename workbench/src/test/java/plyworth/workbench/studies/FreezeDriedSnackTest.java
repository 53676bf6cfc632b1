package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Product;

/** What the trade expects of freeze-dried fruit; common practice. */
class FreezeDriedSnackTest {

  private static final double AIR_PERCENT = 20.9;

  private static final String BOND = " / adhesive-pu-solventless 1.8 g/m2 @solventless / ";
  private static final String PRINTED_FILM = "bopet 12 um / ink-nc 2 g/m2 @flexo-solvent 65 %";

  private static final Desk DESK = Examples.whole(Examples.SNACK);

  private static ScoredStructure film(String barrier) {
    return DESK.score(PRINTED_FILM + BOND + barrier + BOND + "mlldpe 60 um");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"kraft-paper 70 g/m2", "barrier-paper-high 75 g/m2", "metallised-paper 60 g/m2"})
  void paperFailsCoatedOrMetallisedToo(String paper) {
    ScoredStructure scored =
        DESK.score(
            "ink-wb 1.4 g/m2 @flexo-water 45 % / " + paper + " / ldpe 30 um @extrusion-coating");
    assertThat(scored.sheet().onOffer()).isTrue();
    assertThat(scored.blocks()).contains("barrier/does-not-keep");
  }

  @Test
  void foilKeepsThePiecesWithMargin() {
    assertThat(DESK.baseline().margin()).isGreaterThan(2);
    assertThat(film("aluminium-foil 7 um !bright-out").margin()).isGreaterThan(2);
  }

  @Test
  void metallisedPolyesterKeepsThePiecesWithLittleToSpare() {
    ScoredStructure scored = film("bopet-met 12 um");
    assertThat(scored.sheet().onOffer()).isTrue();
    assertThat(scored.blocks()).isEmpty();
    assertThat(scored.margin()).isBetween(1.0, 1.5);
    assertThat(scored.warnings()).contains("barrier/thin-margin");
  }

  @Test
  void oxygenDecidesSoMetallisedPolypropyleneFailsThoughItHoldsWaterBackBetter() {
    ScoredStructure scored = film("bopp-met 18 um");
    assertThat(scored.figure("barrier/wvtr"))
        .isLessThan(film("bopet-met 12 um").figure("barrier/wvtr"));
    assertThat(scored.keeps()).isFalse();
  }

  @Test
  void withoutGasFlushTheHeadSpaceSpoilsThePiecesEvenInFoil() {
    Brief brief = DESK.study().brief();
    Brief withoutFlush =
        new Brief(
            inAir(brief.product()),
            brief.climate(),
            brief.shelfLifeDays(),
            brief.pack(),
            brief.machine(),
            brief.market(),
            brief.order());
    ScoredStructure baseline = new Desk(DESK.study().with(withoutFlush)).baseline();
    assertThat(baseline.blocks()).contains("barrier/does-not-keep");
    assertThat(baseline.days()).isZero();
  }

  private static Product inAir(Product product) {
    return new Product(
        product.name(),
        product.form(),
        product.massG(),
        product.contents(),
        product.moisture(),
        product.oxygen().map(o -> new OxygenLimit(o.uptakePpm(), AIR_PERCENT)),
        product.volatileContent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"balanced", "cost-led", "sustainability-led"})
  void filmThatPassesItsStreamLeadsWhereCostOrTheStreamCounts(String weighting) {
    ScoredStructure leader = DESK.leader(weighting);
    assertThat(leader.hasFoil()).as("%s", leader).isFalse();
    assertThat(leader.keeps()).isTrue();
    assertThat(leader.figure("recyclability/class")).isGreaterThanOrEqualTo(2);
  }

  @Test
  void foilLeadsWhereProtectionComesFirst() {
    assertThat(DESK.leader("protection-led").hasFoil()).isTrue();
  }
}
