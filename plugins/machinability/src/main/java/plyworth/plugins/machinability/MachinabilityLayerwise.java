package plyworth.plugins.machinability;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** The figures of millions of structures from joined contributions of their layers. */
final class MachinabilityLayerwise implements Layerwise {

  static final int BENDING = 0;
  static final int HEAT = BENDING + Join.BENDING.size();
  static final int INITIATION = HEAT + Join.HEAT.size();
  static final int UPPER_LIMIT = INITIATION + 1;
  static final int FACE_LIMIT = UPPER_LIMIT + 1;
  static final int WEB_LIMIT = FACE_LIMIT + 1;
  static final int SEALANT = WEB_LIMIT + 1;
  static final int ATTACKS = SEALANT + Join.AFFINE.size();
  static final int INNER_ATTACKS = ATTACKS + 1;

  private static final List<StatePart> STATE =
      List.of(
          new StatePart("bending", Join.BENDING),
          new StatePart("heat", Join.HEAT),
          new StatePart("seal initiation", Join.INNERMOST),
          new StatePart("upper seal limit", Join.INNERMOST),
          new StatePart("jaw-face limit of the face", Join.OUTERMOST),
          new StatePart("jaw-face limit of the web", Join.OUTERMOST),
          new StatePart("sealable layers that lie together", Join.AFFINE),
          new StatePart("attacks", Join.BITS),
          new StatePart("attacks on the innermost layer", Join.INNERMOST));

  private final ScoringContext context;
  private final Settings settings;
  private final Attack attack;
  private final SealantGauge gauge;
  private final Judge judge;
  private final Optional<ThreadLocal<BlockJudge>> blocks;

  MachinabilityLayerwise(
      ScoringContext context, Settings settings, Attack attack, SealantGauge gauge, Judge judge) {
    this(context, settings, attack, gauge, judge, Optional.empty());
  }

  private MachinabilityLayerwise(
      ScoringContext context,
      Settings settings,
      Attack attack,
      SealantGauge gauge,
      Judge judge,
      Optional<ThreadLocal<BlockJudge>> blocks) {
    this.context = context;
    this.settings = settings;
    this.attack = attack;
    this.gauge = gauge;
    this.judge = judge;
    this.blocks = blocks;
  }

  @Override
  public Layerwise only(Set<String> criteria) {
    boolean timed =
        criteria.contains(Criteria.SEAL_DWELL) || criteria.contains(Criteria.PACKS_PER_MINUTE);
    ThreadLocal<BlockJudge> own = ThreadLocal.withInitial(() -> judge.ofBlocks(timed));
    return new MachinabilityLayerwise(context, settings, attack, gauge, judge, Optional.of(own));
  }

  @Override
  public List<StatePart> state() {
    return STATE;
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    LayerFigures figures = LayerFigures.of(layer, context, settings);
    double gaugeMm = figures.gaugeMm();
    state[BENDING] = figures.modulus() * gaugeMm;
    state[BENDING + 1] = gaugeMm / 2 + 0 * figures.modulus();
    state[BENDING + 2] = figures.modulus() * gaugeMm * gaugeMm * gaugeMm / 12;
    state[BENDING + 3] = gaugeMm;
    figures.wall().write(state, HEAT);
    state[INITIATION] = figures.initiation();
    state[UPPER_LIMIT] = figures.upperLimit();
    state[FACE_LIMIT] = figures.faceLimit();
    if (figures.web()) {
      state[WEB_LIMIT] = figures.faceLimit();
    }
    state[SEALANT] = gauge.goesOn(figures) ? 1 : 0;
    state[SEALANT + 2] = gauge.counted(figures);
    Set<String> outerKinds = outer == null ? Set.of() : context.kinds(outer);
    state[ATTACKS] = attack.fired(AttackRule.Place.ANY, figures.kinds(), outerKinds);
    state[INNER_ATTACKS] = attack.fired(AttackRule.Place.INNERMOST, figures.kinds(), Set.of());
  }

  @Override
  public void finish(Block block) {
    blocks.ifPresentOrElse(own -> own.get().judge(block), () -> judge(block));
    System.arraycopy(block.states[BENDING + 2], 0, block.low[2], 0, block.size);
    System.arraycopy(block.states[BENDING], 0, block.low[4], 0, block.size);
  }

  private void judge(Block block) {
    SealTile tile = judge.tile();
    for (int from = 0; from < block.size; from += SeriesColumns.ROWS) {
      int count = Math.min(SeriesColumns.ROWS, block.size - from);
      tile.read(block.states, from, count);
      judge.judge(tile, count);
      System.arraycopy(tile.dwell, 0, block.low[0], from, count);
      System.arraycopy(tile.window, 0, block.low[1], from, count);
      System.arraycopy(tile.packs, 0, block.low[3], from, count);
      System.arraycopy(tile.attackClass, 0, block.low[5], from, count);
      System.arraycopy(tile.packs, 0, block.provided[0], from, count);
      System.arraycopy(tile.blocked, 0, block.blocked, from, count);
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    MachinabilityBounds bounds = new MachinabilityBounds(settings, attack);
    for (int i = 0; i < block.size; i++) {
      if (settled(block, i)) {
        settle(block, i);
      } else {
        bounds.bound(block, i);
      }
    }
  }

  /** The figures in the order of {@link Criteria#ALL}. */
  static double[] figures(double tensile, double bending, Verdict verdict) {
    return new double[] {
      verdict.dwellS(), verdict.windowK(), bending, verdict.packs(), tensile, verdict.attackClass()
    };
  }

  private static boolean settled(BoundsBlock block, int i) {
    for (int k = 0; k < block.stateLow.length; k++) {
      if (block.stateLow[k][i] != block.stateHigh[k][i]) {
        return false;
      }
    }
    return true;
  }

  private void settle(BoundsBlock block, int i) {
    SealTile tile = judge.tile();
    tile.read(block.stateLow, i, 1);
    judge.judge(tile, 1);
    Verdict verdict = tile.verdict(0);
    double[] figures = figures(block.stateLow[BENDING][i], block.stateLow[BENDING + 2][i], verdict);
    for (int c = 0; c < figures.length; c++) {
      block.low[c][i] = figures[c];
      block.high[c][i] = figures[c];
    }
    block.mustBlock[i] = verdict.blocked();
    block.mayBlock[i] = verdict.blocked();
    block.providedLow[0][i] = verdict.packs();
    block.providedHigh[0][i] = verdict.packs();
  }
}
