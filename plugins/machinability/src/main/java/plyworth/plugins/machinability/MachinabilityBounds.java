package plyworth.plugins.machinability;

import static plyworth.plugins.machinability.MachinabilityLayerwise.ATTACKS;
import static plyworth.plugins.machinability.MachinabilityLayerwise.BENDING;
import static plyworth.plugins.machinability.MachinabilityLayerwise.FACE_LIMIT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.HEAT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.INITIATION;
import static plyworth.plugins.machinability.MachinabilityLayerwise.INNER_ATTACKS;
import static plyworth.plugins.machinability.MachinabilityLayerwise.SEALANT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.UPPER_LIMIT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.WEB_LIMIT;

import plyworth.shared.scoring.BoundsBlock;

/** What the figures of an unfinished structure can still become. */
final class MachinabilityBounds {

  private final Settings settings;
  private final Sealing sealing;
  private final Attack attack;

  MachinabilityBounds(Settings settings, Attack attack) {
    this.settings = settings;
    this.sealing = new Sealing(settings);
    this.attack = attack;
  }

  void bound(BoundsBlock block, int i) {
    block.mustBlock[i] = 0;
    block.mayBlock[i] = 0;
    WarmingBounds warming =
        WarmingBounds.of(
            Wall.read(block.stateLow, HEAT, i),
            Wall.read(block.stateHigh, HEAT, i),
            settings.contact(),
            settings.machine().zone());
    dwell(block, i, warming);
    window(block, i, warming);
    range(block, i, 2, block.stateLow[BENDING + 2][i], block.stateHigh[BENDING + 2][i]);
    range(block, i, 4, block.stateLow[BENDING][i], block.stateHigh[BENDING][i]);
    sealant(block, i);
    attack(block, i);
  }

  private void dwell(BoundsBlock block, int i, WarmingBounds warming) {
    double easiest = block.stateLow[INITIATION][i];
    double hardest = block.stateHigh[INITIATION][i];
    boolean must = sealing.never(easiest);
    boolean may = sealing.never(hardest);
    double least = must ? Sealing.NEVER_S : warming.leastTime(sealing.missing(easiest));
    double most = may ? Sealing.NEVER_S : warming.mostTime(sealing.missing(hardest));
    double unknown = must ? 0 : 0 * warming.farthest();
    double shortest = Math.min(Sealing.NEVER_S, least) + unknown;
    double longest = Math.min(Sealing.NEVER_S, most) + unknown;
    range(block, i, 0, shortest, longest);
    double slowest = FillingCycle.of(settings, longest).packsPerMinute();
    double fastest = FillingCycle.of(settings, shortest).packsPerMinute();
    range(block, i, 3, slowest, fastest);
    block.providedLow[0][i] = slowest;
    block.providedHigh[0][i] = fastest;
    rule(block, i, Judge.UNSEALABLE, must, may);
  }

  private void window(BoundsBlock block, int i, WarmingBounds warming) {
    double held = settings.machine().dwellS();
    double easiest = block.stateLow[INITIATION][i];
    double hardest = block.stateHigh[INITIATION][i];
    double least = warming.leastRemaining(held);
    double coolestLow = sealing.jawFor(sealing.target(easiest), least);
    double coolestHigh = sealing.jawFor(sealing.target(hardest), warming.mostRemaining(held));
    double hottestLow = sealing.hottest(faceLow(block, i), block.stateLow[UPPER_LIMIT][i], least);
    double hottestHigh =
        sealing.hottest(
            faceHigh(block, i), block.stateHigh[UPPER_LIMIT][i], warming.mostRemainingPlain(held));
    double low = sealing.window(coolestHigh, hottestLow);
    double high = sealing.window(coolestLow, hottestHigh);
    range(block, i, 1, low, high);
    rule(block, i, Judge.NO_WINDOW, high < 0 && sealant(hardest), !(low >= 0) && sealant(easiest));
  }

  private void sealant(BoundsBlock block, int i) {
    double least = settings.leastSealantUm();
    rule(
        block,
        i,
        Judge.TOO_THIN,
        block.stateHigh[SEALANT + 2][i] < least && sealant(block.stateHigh[INITIATION][i]),
        block.stateLow[SEALANT + 2][i] < least && sealant(block.stateLow[INITIATION][i]));
  }

  private void attack(BoundsBlock block, int i) {
    double innerLow = block.stateLow[INNER_ATTACKS][i];
    double innerHigh = block.stateHigh[INNER_ATTACKS][i];
    long certain = (long) block.stateLow[ATTACKS][i];
    long possible = (long) block.stateHigh[ATTACKS][i];
    if (innerLow == innerHigh) {
      certain |= (long) innerLow;
      possible |= (long) innerHigh;
    } else {
      possible |= upTo((long) innerHigh);
    }
    int worst = attack.verdict(possible);
    int best = attack.verdict(certain);
    range(block, i, 5, worst, best);
    rule(block, i, Judge.ATTACKED, best == Attack.BLOCKED, worst == Attack.BLOCKED);
  }

  /** Every set whose number is not greater lies in this one. */
  private static long upTo(long set) {
    return set <= 0 ? 0 : (Long.highestOneBit(set) << 1) - 1;
  }

  private static boolean sealant(double initiation) {
    return !(initiation >= Sealing.NO_SEALANT_C);
  }

  private static double faceLow(BoundsBlock block, int i) {
    double web = block.stateLow[WEB_LIMIT][i];
    boolean noWeb = block.stateHigh[WEB_LIMIT][i] == Double.NEGATIVE_INFINITY;
    return Math.min(block.stateLow[FACE_LIMIT][i], noWeb ? Double.POSITIVE_INFINITY : web);
  }

  private static double faceHigh(BoundsBlock block, int i) {
    boolean perhapsNoWeb = block.stateLow[WEB_LIMIT][i] == Double.NEGATIVE_INFINITY;
    return Math.min(
        block.stateHigh[FACE_LIMIT][i],
        perhapsNoWeb ? Double.POSITIVE_INFINITY : block.stateHigh[WEB_LIMIT][i]);
  }

  private static void range(BoundsBlock block, int i, int criterion, double low, double high) {
    block.low[criterion][i] = low;
    block.high[criterion][i] = high;
  }

  private static void rule(BoundsBlock block, int i, long bit, boolean must, boolean may) {
    block.mustBlock[i] |= must ? bit : 0;
    block.mayBlock[i] |= may ? bit : 0;
  }
}
