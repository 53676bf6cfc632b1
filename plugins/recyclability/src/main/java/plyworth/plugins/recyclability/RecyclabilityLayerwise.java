package plyworth.plugins.recyclability;

import java.util.List;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * The layerwise form. Nothing here depends on anything but masses and the two faces, so it is
 * exact.
 */
record RecyclabilityLayerwise(ScoringContext context, Judge judge) implements Layerwise {

  /** Measures behind the criteria, in the order of the criteria. */
  static final Measure[] CRITERIA = {
    Measure.CLASS, Measure.RECYCLABLE, Measure.TARGET, Measure.FIBRE_YIELD
  };

  /** Factors from the measures to the units of the criteria. */
  static final double[] FACTORS = {1, 100, 100, 100};

  /** What bounds are widened by, so that rounding cannot put a figure outside of them. */
  private static final double ROUNDING = 1e-12;

  @Override
  public List<StatePart> state() {
    return Ledger.PARTS;
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    Ledger.contribute(Composition.layer(layer, context), state);
  }

  @Override
  public void finish(Block block) {
    double[] state = new double[Ledger.SIZE];
    double[] m = new double[Measure.COUNT];
    RuleSet blocking = judge.blocking().orElse(null);
    for (int i = 0; i < block.size; i++) {
      gather(block.states, i, state);
      judge.exact(state, m);
      boolean known = !Double.isNaN(m[Measure.NON_FIBRE.ordinal()]);
      for (int c = 0; c < CRITERIA.length; c++) {
        block.low[c][i] = known ? m[CRITERIA[c].ordinal()] * FACTORS[c] : Double.NaN;
      }
      block.blocked[i] = known && blocking != null && blocking.anyFires(m) ? 1 : 0;
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    double[] stateLow = new double[Ledger.SIZE];
    double[] stateHigh = new double[Ledger.SIZE];
    double[] low = new double[Measure.COUNT];
    double[] high = new double[Measure.COUNT];
    RuleSet blocking = judge.blocking().orElse(null);
    for (int i = 0; i < block.size; i++) {
      gather(block.stateLow, i, stateLow);
      gather(block.stateHigh, i, stateHigh);
      judge.bounds(stateLow, stateHigh, low, high);
      boolean known = known(stateLow) && known(stateHigh);
      block.low[0][i] = known ? low[Measure.CLASS.ordinal()] : Double.NaN;
      block.high[0][i] = known ? high[Measure.CLASS.ordinal()] : Double.NaN;
      for (int c = 1; c < CRITERIA.length; c++) {
        int measure = CRITERIA[c].ordinal();
        block.low[c][i] = known ? low[measure] * FACTORS[c] * (1 - ROUNDING) : Double.NaN;
        block.high[c][i] = known ? high[measure] * FACTORS[c] * (1 + ROUNDING) : Double.NaN;
      }
      block.mustBlock[i] = known && blocking != null && blocking.mustFire(low, high) ? 1 : 0;
      block.mayBlock[i] = blocking != null && (!known || blocking.mayFire(low, high)) ? 1 : 0;
    }
  }

  private static void gather(double[][] columns, int i, double[] state) {
    for (int k = 0; k < Ledger.SIZE; k++) {
      state[k] = columns[k][i];
    }
  }

  private static boolean known(double[] state) {
    for (int k = 0; k < Group.COUNT; k++) {
      if (Double.isNaN(state[k])) {
        return false;
      }
    }
    return true;
  }
}
