package plyworth.shared.scoring.toy;

import java.util.List;
import java.util.OptionalInt;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** The layerwise form of {@link ToyScorer}: mass, price, and whether anything is opaque. */
class ToyLayerwise implements Layerwise {

  static final int LOSS = 3;

  final ToyScorer scorer;

  ToyLayerwise(ToyScorer scorer) {
    this.scorer = scorer;
  }

  @Override
  public List<StatePart> state() {
    return List.of(
        new StatePart("mass", Join.SUM),
        new StatePart("price", Join.SUM),
        new StatePart("opacity", Join.BITS));
  }

  @Override
  public OptionalInt sumOf(String criterion) {
    return criterion.equals("price") ? OptionalInt.of(1) : OptionalInt.empty();
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    double grammage = scorer.context.grammage(layer);
    state[0] = grammage;
    state[1] = grammage / 1000 * scorer.context.property(layer, ToyPlugin.PRICE);
    state[2] = scorer.context.kinds(layer).contains("opaque") ? 1 : 0;
  }

  @Override
  public void finish(Block block) {
    double[] lossHigh = block.apart(LOSS);
    double heaviest = scorer.context.parameter(ToyPlugin.HEAVIEST);
    for (int i = 0; i < block.size; i++) {
      double mass = block.states[0][i];
      block.low[0][i] = mass;
      block.low[1][i] = block.states[1][i];
      block.low[2][i] = mass * scorer.speed(block.needed[0][i]);
      block.low[LOSS][i] = 0;
      lossHigh[i] = mass;
      block.low[4][i] = block.states[2][i];
      block.blocked[i] = mass > heaviest ? 1 : 0;
      block.provided[0][i] = scorer.waste();
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    double heaviest = scorer.context.parameter(ToyPlugin.HEAVIEST);
    for (int i = 0; i < block.size; i++) {
      criteria(block.low, block.stateLow, scorer.speed(block.neededLow[0][i]), i);
      criteria(block.high, block.stateHigh, scorer.speed(block.neededHigh[0][i]), i);
      block.low[LOSS][i] = 0;
      block.mustBlock[i] = block.stateLow[0][i] > heaviest ? 1 : 0;
      block.mayBlock[i] = block.stateHigh[0][i] > heaviest ? 1 : 0;
      block.providedLow[0][i] = scorer.waste();
      block.providedHigh[0][i] = scorer.waste();
    }
  }

  private static void criteria(double[][] figures, double[][] states, double speed, int i) {
    figures[0][i] = states[0][i];
    figures[1][i] = states[1][i];
    figures[2][i] = states[0][i] * speed;
    figures[LOSS][i] = states[0][i];
    figures[4][i] = states[2][i];
  }
}
