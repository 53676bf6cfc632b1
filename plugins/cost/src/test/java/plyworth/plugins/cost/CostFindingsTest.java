package plyworth.plugins.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Order;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

class CostFindingsTest {

  private static final Order ORDER = new Order(2e6, 4, 6, 1000, 10);

  private static ScoringContext library() {
    return Orders.context(Orders.sticks(), MaterialLibrary.standard(), ProcessLibrary.standard());
  }

  private static List<Finding> findings(ScoringContext context, String structure, String rule) {
    return Orders.score(context, LayerNotation.readStructure(structure)).findings().stream()
        .filter(f -> f.rule().equals(rule))
        .toList();
  }

  private static List<Finding> laneStep(double packWidthMm) {
    Brief brief = Orders.brief(packWidthMm, ORDER);
    return findings(Orders.context(brief), "paper 60 g/m2", "lane-step");
  }

  /** 980 mm take 13 lanes of 75.38 mm: a lane of 75.5 mm is 0.1 mm too wide, at the cost of one. */
  @Test
  void aLaneThatJustDoesNotFitIsPointedOut() {
    assertThat(laneStep(33)).isEmpty();
    List<Finding> found = laneStep(33.25);
    assertThat(found).hasSize(1);
    assertThat((double) found.get(0).text().arguments().get(1)).isCloseTo(0.115, within(0.001));
    assertThat(found.get(0).text().arguments().subList(2, 4)).containsExactly(12, 13);
  }

  /** Common practice: below about 8 g/m² a melt between paper and foil does not hold. */
  @Test
  void aMeltTooThinToHoldIsWarnedOf() {
    String thin = "kraft-paper 50 g/m2 / ldpe 6 g/m2 @extrusion-lamination / aluminium-foil 7 um";
    List<Finding> found = findings(library(), thin, "applied-weight-low");
    assertThat(found).extracting(Finding::level).containsExactly(Finding.Level.WARNS);
    assertThat(findings(library(), thin.replace("6 g/m2", "12 g/m2"), "applied-weight-low"))
        .isEmpty();
  }

  @Test
  void layersOfOneCoatingPassAreWeighedTogether() {
    String coextruded =
        "kraft-paper 50 g/m2 / eaa 5 g/m2 @extrusion-coating / ldpe 20 g/m2 @extrusion-coating";
    assertThat(findings(library(), coextruded, "applied-weight-low")).isEmpty();
    String heavy = coextruded.replace("20 g/m2", "40 g/m2");
    assertThat(findings(library(), heavy, "applied-weight-high")).hasSize(1);
  }

  @Test
  void aDominantPriceThatNobodyLookedUpIsNamedWithItsRange() {
    List<Finding> found = findings(library(), "kraft-paper 80 g/m2", "recalled-input");
    assertThat(found).hasSize(1);
    assertThat(found.get(0).source()).contains("from memory");
    assertThat(found.get(0).text().arguments().subList(2, 5)).containsExactly(1.05, 1.7, "EUR/kg");
    assertThat(findings(Orders.context(Orders.sticks()), "paper 80 g/m2", "recalled-input"))
        .isEmpty();
  }

  @Test
  void anAssumedLineSpeedIsSaid() {
    assertThat(findings(library(), "kraft-paper 80 g/m2", "line-speed-assumed")).hasSize(1);
  }

  @Test
  void aLineSpeedOfAnotherPluginIsUsedAndUnknownStaysUnknown() {
    ScoringContext alone = Orders.context(Orders.sticks());
    ScoringContext provided =
        new ScoringContext(
            alone.brief(),
            alone.materials(),
            alone.processes(),
            alone.parameters(),
            Set.of(Figure.PACKS_PER_MINUTE),
            alone.draw());
    assertThat(packed(provided, 50).orUnknown()).isCloseTo(8.25583, within(1e-4));
    assertThat(packed(provided, 25).orUnknown()).isGreaterThan(11);
    assertThat(packed(provided, Double.NaN))
        .isEqualTo(new Outcome.DataMissing("packs-per-minute", "packs-per-minute"));
    assertThat(packed(provided, 0)).isInstanceOf(Outcome.DataMissing.class);
  }

  private static Outcome packed(ScoringContext context, double packsPerMinute) {
    Map<Figure, Double> needed = new EnumMap<>(Figure.class);
    needed.put(Figure.PACKS_PER_MINUTE, packsPerMinute);
    Assessment assessment = new CostPlugin().bind(context).score(Orders.FOIL_ROUTE, needed);
    assertThat(assessment.findings()).noneMatch(f -> f.rule().equals("line-speed-assumed"));
    return assessment.outcomes().get("packed-per-1000");
  }
}
