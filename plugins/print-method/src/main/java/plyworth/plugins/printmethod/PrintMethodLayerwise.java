package plyworth.plugins.printmethod;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** The layerwise form: masses and energy add up, verdicts unite, the innermost layer decides. */
record PrintMethodLayerwise(Contributions contributions) implements Layerwise {

  private static final List<StatePart> STATE =
      List.of(
          new StatePart("solvent emitted", Join.SUM),
          new StatePart("solvent input", Join.SUM),
          new StatePart("drying energy", Join.SUM),
          new StatePart("dry print", Join.SUM),
          new StatePart("water", Join.SUM),
          new StatePart("suitability", Join.BITS),
          new StatePart("print innermost", Join.INNERMOST));

  /** Components that are criteria as they stand, in the order of the criteria. */
  private static final int SUMS = 5;

  private static final int BITS = 5;
  private static final int INNERMOST = 6;
  private static final long UNSUITABLE = 1;
  private static final long PRODUCT_SIDE = 2;

  @Override
  public List<StatePart> state() {
    return STATE;
  }

  @Override
  public OptionalInt sumOf(String criterion) {
    return IntStream.range(0, SUMS)
        .filter(k -> Criteria.ALL.get(k).id().equals(criterion))
        .findFirst();
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    Contribution adds = contributions.of(layer, outer);
    state[0] = adds.emitted();
    state[1] = adds.input();
    state[2] = adds.energy();
    state[3] = adds.dry();
    state[4] = adds.water();
    state[BITS] = adds.bits();
    state[INNERMOST] = adds.exposedPrint() ? 1 : 0;
  }

  @Override
  public void finish(Block block) {
    for (int k = 0; k < SUMS; k++) {
      System.arraycopy(block.states[k], 0, block.low[k], 0, block.size);
    }
    double[] bits = block.states[BITS];
    double[] innermost = block.states[INNERMOST];
    for (int i = 0; i < block.size; i++) {
      Verdict verdict = SuitabilityBits.worst((long) bits[i]);
      block.low[SUMS][i] = verdict.figure();
      block.blocked[i] = rules(verdict == Verdict.NONE, innermost[i] == 1);
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    for (int k = 0; k < SUMS; k++) {
      System.arraycopy(block.stateLow[k], 0, block.low[k], 0, block.size);
      System.arraycopy(block.stateHigh[k], 0, block.high[k], 0, block.size);
    }
    for (int i = 0; i < block.size; i++) {
      long must = (long) block.stateLow[BITS][i];
      long may = (long) block.stateHigh[BITS][i];
      Verdict gravest = SuitabilityBits.gravest(must, may);
      Verdict mildest = SuitabilityBits.mildest(must, may);
      boolean unknown = SuitabilityBits.mayBeUnknown(must, may);
      block.low[SUMS][i] = unknown ? Double.NaN : gravest.figure();
      block.high[SUMS][i] = unknown ? Double.NaN : mildest.figure();
      block.mustBlock[i] = rules(mildest == Verdict.NONE, block.stateLow[INNERMOST][i] == 1);
      block.mayBlock[i] = rules(gravest == Verdict.NONE, block.stateHigh[INNERMOST][i] == 1);
    }
  }

  private static long rules(boolean unsuitable, boolean productSide) {
    return (unsuitable ? UNSUITABLE : 0) | (productSide ? PRODUCT_SIDE : 0);
  }
}
