package plyworth.plugins.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.brief.Brief;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.RandomStructures;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** What must hold for any structure and any order. */
class CostPropertiesTest {

  static LongStream seeds() {
    return LongStream.range(100, 160);
  }

  private static ScoringContext library(Brief brief) {
    return Orders.context(brief, MaterialLibrary.standard(), ProcessLibrary.standard());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aLargerOrderIsNeverDearerAPack(long seed) {
    Structure structure = RandomStructures.structure(seed);
    for (Brief brief : SampleBriefs.all()) {
      Tariff tariff = new Tariff(library(brief));
      double last = Double.POSITIVE_INFINITY;
      for (double packs = 1e4; packs < 1e9; packs *= 3) {
        double price = Bill.of(structure, tariff, packs).pricePerThousand();
        assertThat(price).as(structure.toString()).isPositive().isLessThan(last * (1 + 1e-12));
        last = price;
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreWasteNeverCostsLess(long seed) {
    Structure structure = RandomStructures.structure(seed);
    ScoringContext context = library(SampleBriefs.sugarStick());
    double asIs = Orders.score(context, structure).figure("price-per-1000");
    for (Process process : context.processes().processes().values()) {
      for (String figure : Set.of("running-waste", "setup-waste")) {
        double more = process.figure(figure).typical() * 1.5;
        Process wasteful = Shop.with(process, figure, Double.isNaN(more) ? 0 : more);
        ScoringContext worse =
            Orders.context(
                context.brief(), context.materials(), context.processes().with(Set.of(wasteful)));
        assertThat(Orders.score(worse, structure).figure("price-per-1000"))
            .as(process.id() + " " + figure + " of " + structure)
            .isGreaterThanOrEqualTo(asIs * (1 - 1e-12));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void layerByLayerGivesTheWholeBill(long seed) {
    Structure structure = RandomStructures.structure(seed);
    for (Brief brief : SampleBriefs.all()) {
      Scorer scorer = new CostPlugin().bind(library(brief));
      double[] whole =
          scorer.score(structure, Map.<Figure, Double>of()).outcomes().values().stream()
              .mapToDouble(o -> o.orUnknown())
              .toArray();
      double[][] columns = finish(scorer.layerwise().orElseThrow(), structure).low;
      for (int c = 0; c < whole.length; c++) {
        assertThat(columns[c][0])
            .as(Criteria.ALL.get(c).id() + " of " + structure)
            .isCloseTo(whole[c], withinPercentage(1e-10));
      }
    }
  }

  private static Block finish(Layerwise layerwise, Structure structure) {
    int size = StatePart.size(layerwise.state());
    double[] joined = new double[size];
    StatePart.neutral(layerwise.state(), joined);
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      double[] own = new double[size];
      StatePart.neutral(layerwise.state(), own);
      layerwise.contribute(layer, outer, own);
      double[] both = new double[size];
      StatePart.join(layerwise.state(), joined, own, both);
      joined = both;
      outer = layer;
    }
    Block block = new Block(size, 1, Criteria.ALL.size(), 0, 1);
    for (int k = 0; k < size; k++) {
      block.states[k][0] = joined[k];
    }
    block.size = 1;
    layerwise.finish(block);
    return block;
  }

  @Test
  void theExplanationAddsUpToTheCostOfAGoodPack() {
    ScoringContext context = Orders.context(Orders.sticks());
    var bars =
        PriceSections.shares(
            Bill.of(Orders.FOIL_ROUTE, new Tariff(context), 2e6), new Tariff(context), 50);
    double sum = bars.lengths().stream().mapToDouble(Double::doubleValue).sum();
    double packed = Orders.score(context, Orders.FOIL_ROUTE).figure("packed-per-1000");
    assertThat(sum).isCloseTo(packed, withinPercentage(1e-10));
  }
}
