package plyworth.plugins.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Order;
import plyworth.shared.route.Process;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

/** Waste, hours, tools and prices per area: analytic. */
class WasteTest {

  private static PassRates waste(double running, double setup) {
    return new PassRates(0, setup, running, 0, 0);
  }

  /** Output 100 000 m²; running waste 4, 3, 5 % of the input; set-up waste 600, 400, 300 m². */
  @Test
  void wasteCompoundsBackwardsThroughThreePasses() {
    double i3 = waste(0.05, 300).input(100_000);
    double i2 = waste(0.03, 400).input(i3);
    double i1 = waste(0.04, 600).input(i2);
    assertThat(i3).isCloseTo(105_563.158, within(0.01));
    assertThat(i2).isCloseTo(109_227.998, within(0.01));
    assertThat(i1).isCloseTo(114_379.164, within(0.01));
    double running = waste(0.04, 0).input(waste(0.03, 0).input(waste(0.05, 0).input(1)));
    assertThat(running).isCloseTo(1.130403, within(1e-6));
  }

  @Test
  void aPercentLostInTheLastPassCostsMoreThanInTheFirst() {
    double asIs = foilRoute("slitting", 0.015);
    double inPrinting = foilRoute("press", 0.04) - asIs;
    double inSlitting = foilRoute("slitting", 0.025) - asIs;
    assertThat(inPrinting).isPositive();
    assertThat(inSlitting).isGreaterThan(2 * inPrinting);
  }

  private static double foilRoute(String process, double runningWaste) {
    Process changed = Shop.with(Shop.plant().require(process), "running-waste", runningWaste);
    ScoringContext context =
        Orders.context(Orders.sticks(), Shop.materials(), Shop.plant().with(List.of(changed)));
    return Orders.score(context, Orders.FOIL_ROUTE).figure("price-per-1000");
  }

  /** Cylinders for 2700 EUR, orders of 60 000 m, life 1.5 million m: max(2700/8, 108) = 337.50. */
  @Test
  void toolsAreSharedByTheOrdersUntilTheyWearOut() {
    assertThat(cylinders(8)).isCloseTo(337.50, within(1e-9));
    assertThat(cylinders(40)).isCloseTo(108.00, within(1e-9));
  }

  private static double cylinders(double orders) {
    double packsIn60000Metres = 60_000 * 13 / 0.110;
    Order order = new Order(packsIn60000Metres, orders, 6, 1000, 10);
    Process press = Shop.with(Shop.plant().require("press"), "tooling-per-colour", 450);
    return Orders.tariff(Orders.brief(33, order))
        .tooling(Shop.with(press, "tool-life", 1.5e6), packsIn60000Metres);
  }

  @Test
  void noNewColourMeansNoTools() {
    Tariff tariff = Orders.tariff(Orders.brief(33, new Order(1e6, 1, 0, 1000, 10)));
    assertThat(tariff.tooling(Shop.plant().require("press"), 1e6)).isZero();
  }

  /** Foil 18.9 g/m² at 6.00 EUR/kg; metallised polyester 16.8 g/m² at 3.10 EUR/kg. */
  @Test
  void websArePricedByAreaNotByMass() {
    Tariff tariff = Orders.tariff(Orders.sticks());
    assertThat(tariff.materialPerM2(LayerNotation.readLayer("foil 7 um")))
        .isCloseTo(0.113400, withinPercentage(0.01));
    assertThat(tariff.materialPerM2(LayerNotation.readLayer("pet-met 12 um")))
        .isCloseTo(0.052080, withinPercentage(0.01));
  }

  @Test
  void setupWasteGrowsWithTheWidthOfTheWeb() {
    Tariff wide = Orders.tariff(Orders.brief(33, new Order(1e6, 1, 6, 1300, 10)));
    PassRates press = wide.rates(Shop.plant().require("press"));
    assertThat(press.setupWasteM2()).isCloseTo(1040, within(1e-9));
    assertThat(press.minutesPerM2()).isCloseTo(1 / (300 * 1.3 * 0.85), within(1e-12));
  }
}
