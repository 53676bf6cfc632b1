package plyworth.plugins.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.scoring.Assessment;

/**
 * An order of two million stick packs of paper, foil and polyethylene reckoned by hand from test
 * values: the arithmetic is checked, not the prices. Margin 18 % of the price.
 */
class FoilRouteTest {

  private static final Tariff TARIFF = Orders.tariff(Orders.sticks());
  private static final Bill BILL = Bill.of(Orders.FOIL_ROUTE, TARIFF, 2e6);
  private static final Assessment SCORE =
      Orders.score(Orders.context(Orders.sticks()), Orders.FOIL_ROUTE);

  @Test
  void everyPassIsEnteredByTheAreaThatItsWasteAsksFor() {
    assertThat(BILL.netM2()).isCloseTo(16_500, within(1e-9));
    List<Double> areas = BILL.passes().stream().map(Bill.PassItem::inputM2).toList();
    double[] expected = {20_329.408, 18_943.526, 17_982.438, 17_230.789};
    for (int k = 0; k < expected.length; k++) {
      assertThat(areas.get(k)).isCloseTo(expected[k], within(0.01));
    }
  }

  @Test
  void everyPassRunsItsHours() {
    List<Double> hours = BILL.passes().stream().map(Bill.PassItem::hours).toList();
    double[] expected = {2.7764, 2.4466, 2.1290, 1.8636};
    for (int k = 0; k < expected.length; k++) {
      assertThat(hours.get(k)).isCloseTo(expected[k], within(1e-4));
    }
  }

  @Test
  void theItemsAddUpToThePrice() {
    assertThat(BILL.materialCost()).isCloseTo(4822.87, within(0.01));
    assertThat(BILL.machineCost()).isCloseTo(2583.84, within(0.01));
    assertThat(BILL.tooling()).isCloseTo(525.00, within(1e-9));
    assertThat(BILL.freight()).isCloseTo(212.06, within(0.01));
    assertThat(BILL.cost()).isCloseTo(8143.76, within(0.01));
    assertThat(BILL.price()).isCloseTo(9931.42, within(0.01));
  }

  /** Wrong answers nearby: margin as mark-up 4.8048, trim ignored 4.8744, waste added 4.8467. */
  @Test
  void theFilmForAThousandPacksCostsFourEuroNinetySeven() {
    assertThat(SCORE.figure("price-per-1000")).isCloseTo(4.96571, withinPercentage(0.01));
    assertThat(SCORE.figure("price-per-1000m2")).isCloseTo(601.904, withinPercentage(0.01));
    assertThat(SCORE.figure("grammage")).isCloseTo(107.1, within(1e-9));
  }

  /** Line 60 EUR/h, 50 cycles a minute, 8 lanes, efficiency 0.80, 2 % packing waste. */
  @Test
  void theLineAddsToAGoodPackAndRejectsArePaidByTheGood() {
    FillingLine line = new FillingLine(Orders.sticks().machine());
    assertThat(line.perThousand(50)).isCloseTo(3.1250, within(1e-12));
    assertThat(line.perThousandGood(4.96571, 0)).isCloseTo(5.06705, withinPercentage(0.01));
    assertThat(SCORE.figure("packed-per-1000")).isCloseTo(8.25583, withinPercentage(0.01));
  }

  /** A structure that saves 0.71084 EUR of film per 1000 may slow the line to 40.734 cycles. */
  @Test
  void aSlowerLineEatsTheSavingOfACheaperFilm() {
    FillingLine line = new FillingLine(Orders.sticks().machine());
    assertThat(line.perThousand(40.734) - line.perThousand(50))
        .isCloseTo(0.71084, withinPercentage(0.01));
  }

  @ParameterizedTest
  @CsvSource({
    "1e5, 27.4286",
    "2e5, 15.6060",
    "5e5, 8.5125",
    "1e6, 6.1480",
    "2e6, 4.9657",
    "5e6, 4.2564",
    "1e7, 4.0199",
    "5e7, 3.8307"
  })
  void smallOrdersAreDearAPack(double packs, double perThousand) {
    assertThat(Bill.of(Orders.FOIL_ROUTE, TARIFF, packs).pricePerThousand())
        .isCloseTo(perThousand, withinPercentage(0.01));
  }

  @Test
  void thePriceIsAFixedPartAndSoMuchAPack() {
    OrderSize size = OrderSize.of(Orders.FOIL_ROUTE, TARIFF, 2e6);
    assertThat(size.fixed()).isCloseTo(2364.518, withinPercentage(0.01));
    assertThat(size.variable() * 1000).isCloseTo(3.783451, withinPercentage(0.01));
    assertThat(size.elasticity(2e5)).isCloseTo(-0.75756, withinPercentage(0.01));
    assertThat(size.elasticity(2e6)).isCloseTo(-0.23809, withinPercentage(0.01));
    assertThat(size.smallestOrder(0.1)).isCloseTo(5_624_670, withinPercentage(0.01));
    double whole = Bill.of(Orders.FOIL_ROUTE, TARIFF, 1e7).pricePerThousand();
    assertThat(size.pricePerThousand(1e7)).isCloseTo(whole, withinPercentage(1e-7));
  }
}
