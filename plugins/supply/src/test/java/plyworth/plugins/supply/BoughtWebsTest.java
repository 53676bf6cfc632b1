package plyworth.plugins.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Outcome;

/** What can be bought, when, and what is left over; offers are invented, sums worked by hand. */
class BoughtWebsTest {

  private static final Order STICKS = Order.sticks();

  private static final String ON_PAPER = " / ldpe 20 um @extrusion-coating";

  @Test
  void aMinimumOrderLeavesASurplusThatIsSaidInKilogramsAndMoney() {
    String paper = "kraft-paper 50 g/m2" + ON_PAPER;
    double surplus = 2000 - Order.AREA_M2 * 50 / 1000;
    Assessment scored = STICKS.score(paper);
    assertThat(scored.figure("surplus")).isCloseTo(surplus, within(1e-9));
    double price = scored.figure("surplus-value") / surplus;
    assertThat(price).as("EUR/kg of kraft paper, from the material library").isBetween(0.8, 3.0);
    assertThat(scored.findings())
        .filteredOn(f -> f.rule().equals("minimum-order"))
        .extracting(Finding::level)
        .containsExactly(Finding.Level.WARNS);
  }

  @Test
  void aLargerOrderLeavesLessOver() {
    double last = Double.POSITIVE_INFINITY;
    for (double packs : new double[] {5e5, 1e6, 2e6, 4e6, 8e6}) {
      double surplus = STICKS.of(packs).score("kraft-paper 50 g/m2" + ON_PAPER).figure("surplus");
      assertThat(surplus).isLessThan(last);
      last = surplus;
    }
    assertThat(last).isZero();
    assertThat(STICKS.of(8e6).score("kraft-paper 50 g/m2" + ON_PAPER).findings())
        .noneMatch(f -> f.rule().equals("minimum-order"));
  }

  @Test
  void aMinimumOrderByAreaWeighsMoreForAThickerWeb() {
    double thin = STICKS.score("ldpe 20 um").figure("surplus");
    double thick = STICKS.score("ldpe 40 um").figure("surplus");
    assertThat(thin).as("(20 000 - 13 200) m² of 18.4 g/m²").isBetween(120.0, 130.0);
    assertThat(thick).isCloseTo(2 * thin, within(1e-9));
  }

  @Test
  void aGaugeThatNobodyOffersIsNotMakeableAndTheGaugesOnOfferAreNamed() {
    String heavy = "kraft-paper 90 g/m2" + ON_PAPER;
    assertThat(STICKS.told(heavy, "finding.no-web.gauge"))
        .containsExactly("kraft-paper 90 g/m2", "40 to 70 g/m2");
    assertThat(STICKS.blocks("glassine 40 g/m2" + ON_PAPER))
        .containsExactly("finding.no-web.material");
  }

  @Test
  void aWebIsBoughtInTheWidthThatRuns() {
    assertThat(STICKS.blocks("ldpe 40 um")).isEmpty();
    assertThat(STICKS.on(1060, 6).told("ldpe 40 um", "finding.no-web.width"))
        .containsExactly("ldpe 40 um", 1060.0, "1000, 1200");
  }

  @Test
  void aWebOfNobodyApprovedIsAReasonOfItsOwn() {
    assertThat(STICKS.blocks("bopp-met 18 um")).containsExactly("finding.web-not-approved");
    assertThat(STICKS.score("bopp-met 18 um").figure("lead-time"))
        .as("what it would take is said all the same")
        .isEqualTo(21 + 1);
  }

  @Test
  void anUnknownLeadTimeOrMinimumOrderIsUnknownNotZero() {
    assertThat(STICKS.score("bopet-met 12 um").outcomes().get("lead-time"))
        .isEqualTo(new Outcome.DataMissing("bopet-met", "lead time"));
    assertThat(STICKS.score("lldpe 40 um").outcomes())
        .containsEntry("surplus", new Outcome.DataMissing("lldpe", "minimum order"))
        .containsEntry("surplus-value", new Outcome.DataMissing("lldpe", "minimum order"));
  }

  @Test
  void aPartOfAFilmIsBoughtAsAPart() {
    String film = "ldpe 20 um / evoh-32 5 um @coextruded";
    assertThat(STICKS.blocks(film)).isEmpty();
    assertThat(STICKS.score(film).figure("lead-time")).isEqualTo(30 + 1);
    assertThat(STICKS.blocks("evoh-32 5 um")).containsExactly("finding.no-web.material");
  }
}
