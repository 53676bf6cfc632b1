package plyworth.plugins.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.route.Process;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Outcome.DataMissing;
import plyworth.shared.scoring.ScoringContext;

class MissingDataTest {

  private static final List<String> PRICES =
      List.of("packed-per-1000", "price-per-1000", "price-per-1000m2");

  private static void pricesLack(Assessment assessment, String subject, String property) {
    for (String id : PRICES) {
      assertThat(assessment.outcomes().get(id)).isEqualTo(new DataMissing(subject, property));
    }
    assertThat(assessment.figure("grammage")).isFinite();
  }

  private static Assessment withProcess(Process process) {
    ScoringContext context =
        Orders.context(Orders.sticks(), Shop.materials(), Shop.plant().with(List.of(process)));
    return Orders.score(context, Orders.FOIL_ROUTE);
  }

  private static Process without(String processId, String figureId) {
    Process process = Shop.plant().require(processId);
    Map<String, Property> figures = new TreeMap<>(process.figures());
    figures.remove(figureId);
    return new Process(process.id(), process.name(), process.role(), figures, "");
  }

  @Test
  void aMaterialWithoutPriceLeavesThePriceUnknownAndIsNamed() {
    Material foil = Shop.material("foil", 2700, 6, "web");
    Map<String, Property> figures = new TreeMap<>(foil.properties());
    figures.remove("price");
    Material unpriced =
        new Material("foil", "Foil", "test", Set.of("web"), "foil", List.of(), figures, "");
    ScoringContext context =
        Orders.context(Orders.sticks(), Shop.materials().with(List.of(unpriced)), Shop.plant());
    pricesLack(Orders.score(context, Orders.FOIL_ROUTE), "foil", "price");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"speed", "setup-time", "setup-waste", "running-waste", "efficiency", "hour-rate"})
  void aPassWithoutAFigureLeavesThePriceUnknownAndIsNamed(String figure) {
    pricesLack(withProcess(without("coating", figure)), "@coating", figure);
    pricesLack(withProcess(without("slitting", figure)), "@slitting", figure);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ink-solids", "tooling-per-colour", "tool-life"})
  void aPressWithoutAFigureLeavesThePriceUnknownAndIsNamed(String figure) {
    pricesLack(withProcess(without("press", figure)), "@press", figure);
  }

  @Test
  void anImpossibleFigureIsAsGoodAsNone() {
    Process press = Shop.plant().require("press");
    pricesLack(withProcess(Shop.with(press, "running-waste", 1)), "@press", "running-waste");
    pricesLack(withProcess(Shop.with(press, "efficiency", 1.2)), "@press", "efficiency");
    pricesLack(withProcess(Shop.with(press, "hour-rate", -5)), "@press", "hour-rate");
  }

  @Test
  void aProcessThatNamesNoEdgeFactorHasNoEdge() {
    double without = withProcess(without("coating", "edge-factor")).figure("price-per-1000");
    Process none = Shop.with(Shop.plant().require("coating"), "edge-factor", 1);
    assertThat(without).isEqualTo(withProcess(none).figure("price-per-1000"));
  }
}
