package plyworth.plugins.recyclability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.RandomStructures;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

class InvariantsTest {

  private static final int TRIES = 500;

  private static final List<String> CRITERIA =
      List.of("class", "recyclable-share", "target-share", "fibre-yield");

  @ParameterizedTest
  @ValueSource(strings = {"eu", "uk"})
  void foilNeverRaisesTheClass(String region) {
    Trial trial = Trial.in(region);
    Random random = new Random(1);
    for (int seed = 0; seed < TRIES; seed++) {
      Structure structure = RandomStructures.structure(seed);
      List<Layer> layers = new ArrayList<>(structure.layers());
      double gauge = 1 + 40 * random.nextDouble();
      layers.add(random.nextInt(layers.size() + 1), Layer.web("aluminium-foil", gauge));
      assertThat(trial.score(new Structure(layers)).figure("class"))
          .as(structure + " with foil")
          .isLessThanOrEqualTo(trial.score(structure).figure("class"));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"eu", "uk"})
  void splittingALayerChangesNothing(String region) {
    Trial trial = Trial.in(region);
    Random random = new Random(2);
    for (int seed = 0; seed < TRIES; seed++) {
      Structure structure = RandomStructures.structure(seed);
      List<Layer> layers = new ArrayList<>(structure.layers());
      int at = random.nextInt(layers.size());
      double share = 0.1 + 0.8 * random.nextDouble();
      Layer whole = layers.get(at);
      layers.set(at, part(whole, share));
      layers.add(at, part(whole, 1 - share));
      same(trial.score(new Structure(layers)), trial.score(structure), structure.toString());
    }
  }

  private static Layer part(Layer layer, double share) {
    return new Layer(
        layer.material(),
        layer.amount() * share,
        layer.unit(),
        layer.process(),
        layer.side(),
        layer.coverage());
  }

  private static void same(Assessment a, Assessment b, String what) {
    for (String id : CRITERIA) {
      assertThat(a.figure(id)).as(id + " of " + what).isEqualTo(b.figure(id), within(1e-9));
    }
  }

  /** Every mass of a random structure anywhere between a smaller and its full amount. */
  @ParameterizedTest
  @ValueSource(strings = {"eu", "uk"})
  void boundsEncloseEveryMassBetween(String region) {
    Trial trial = Trial.in(region, 2027, 2040, Map.of("enforce-market-access", 1.0));
    Random random = new Random(3);
    for (int seed = 0; seed < TRIES; seed++) {
      Structure structure = RandomStructures.structure(seed);
      double slack = random.nextDouble();
      double[] low = state(trial, scaled(structure, () -> 1 - slack * random.nextDouble() * 0.9));
      double[] high = state(trial, structure);
      BoundsBlock bounds = bound(trial, low, high);
      for (int k = 0; k < 5; k++) {
        enclosed(bounds, finish(trial, mixed(low, high, random)), structure.toString());
      }
    }
  }

  private static Structure scaled(Structure structure, DoubleSupplier share) {
    return new Structure(
        structure.layers().stream().map(l -> part(l, share.getAsDouble())).toList());
  }

  private static double[] state(Trial trial, Structure structure) {
    return Composition.of(structure, trial.context()).state();
  }

  private static double[] mixed(double[] low, double[] high, Random random) {
    double[] between = high.clone();
    for (int k = 0; k < Group.COUNT; k++) {
      between[k] = low[k] + random.nextDouble() * (high[k] - low[k]);
    }
    return between;
  }

  private static Block finish(Trial trial, double[] state) {
    Block block = new Block(StatePart.size(Ledger.PARTS), 0, 4, 0, 1);
    block.size = 1;
    for (int k = 0; k < state.length; k++) {
      block.states[k][0] = state[k];
    }
    trial.scorer().layerwise().orElseThrow().finish(block);
    return block;
  }

  private static BoundsBlock bound(Trial trial, double[] low, double[] high) {
    BoundsBlock block = new BoundsBlock(StatePart.size(Ledger.PARTS), 0, 4, 0, 1);
    block.size = 1;
    for (int k = 0; k < low.length; k++) {
      block.stateLow[k][0] = low[k];
      block.stateHigh[k][0] = high[k];
    }
    trial.scorer().layerwise().orElseThrow().bound(block);
    return block;
  }

  private static void enclosed(BoundsBlock bounds, Block exact, String what) {
    for (int c = 0; c < CRITERIA.size(); c++) {
      assertThat(exact.low[c][0])
          .as(CRITERIA.get(c) + " of " + what)
          .isBetween(bounds.low[c][0], bounds.high[c][0]);
    }
    assertThat(bounds.mustBlock[0] & ~exact.blocked[0]).as("must block, " + what).isZero();
    assertThat(exact.blocked[0] & ~bounds.mayBlock[0]).as("may block, " + what).isZero();
  }
}
