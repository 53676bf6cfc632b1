package plyworth.plugins.machinability;

import plyworth.shared.brief.Machine.SealZone;

/**
 * Comes from the states of structures to their figures, the same way for one and for millions:
 * column by column over a {@link SealTile}, then row by row for what is a matter of cases.
 */
final class Judge {

  static final long ATTACKED = 1;
  static final long UNSEALABLE = 1 << 1;
  static final long NO_WINDOW = 1 << 2;
  static final long TOO_THIN = 1 << 3;

  private final Settings settings;
  private final Sealing sealing;
  private final FillingCycle empty;
  private final Attack attack;
  private final ThreadLocal<SealTile> tiles = ThreadLocal.withInitial(SealTile::new);

  Judge(Settings settings, Attack attack) {
    this.settings = settings;
    this.sealing = new Sealing(settings);
    this.empty = FillingCycle.of(settings, 0);
    this.attack = attack;
  }

  /**
   * What judges whole blocks.
   *
   * @param timed whether dwell or packs a minute are asked for
   */
  BlockJudge ofBlocks(boolean timed) {
    return new BlockJudge(settings, attack, this, timed);
  }

  /** The tile that this thread may fill. */
  SealTile tile() {
    return tiles.get();
  }

  /** The figures of one structure. */
  Verdict verdict(LaminateState state) {
    SealTile tile = tile();
    tile.put(state);
    judge(tile, 1);
    return tile.verdict(0);
  }

  /** Writes the figures of the first {@code count} rows. */
  void judge(SealTile tile, int count) {
    double held = settings.machine().dwellS();
    tile.curves.fit(settings.thickest(tile.stack, tile.web));
    tile.curves.remaining(held, tile.remaining);
    for (int i = 0; i < count; i++) {
      tile.missing[i] = sealing.missing(tile.initiation[i]);
    }
    tile.curves.time(tile.missing, tile.time);
    double[] remainingPlain = tile.remaining;
    if (settings.machine().zone() != SealZone.ONE_ON_ONE) {
      remainingPlain = tile.remainingPlain;
      if (plainZoneMatters(tile, count)) {
        tile.plainCurves.fit(settings.plain(tile.stack, tile.web));
        tile.plainCurves.remaining(held, remainingPlain);
      }
    }
    for (int i = 0; i < count; i++) {
      row(tile, i, remainingPlain[i]);
    }
  }

  /**
   * Whether the plain zone can decide anywhere: jaws are never cooler than what they heat, so an
   * outside that bears less than the sealant decides alone.
   */
  private static boolean plainZoneMatters(SealTile tile, int count) {
    for (int i = 0; i < count; i++) {
      if (tile.faceLimit[i] > tile.upperLimit[i]) {
        return true;
      }
    }
    return false;
  }

  private void row(SealTile tile, int i, double remainingPlain) {
    double initiation = tile.initiation[i];
    double face = tile.faceLimit[i];
    double upper = tile.upperLimit[i];
    double dwell = sealing.dwell(initiation, tile.time[i]);
    double coolest = sealing.jawFor(sealing.target(initiation), tile.remaining[i]);
    double hottest = face <= upper ? face : sealing.hottest(face, upper, remainingPlain);
    double window = sealing.window(coolest, hottest);
    int attackClass = attack.verdict(tile.attacks[i]);
    tile.dwell[i] = dwell;
    tile.coolest[i] = coolest;
    tile.hottest[i] = hottest;
    tile.window[i] = window;
    tile.packs[i] = empty.held(settings.machine().dwellFactor() * dwell).packsPerMinute();
    tile.attackClass[i] = attackClass;
    tile.blocked[i] = blocked(initiation, tile.sealantUm[i], window, attackClass);
  }

  /** The rules that block. */
  long blocked(double initiation, double sealantUm, double window, int attackClass) {
    long bits = attackClass == Attack.BLOCKED ? ATTACKED : 0;
    boolean sealant = !(initiation >= Sealing.NO_SEALANT_C);
    bits |= sealing.never(initiation) ? UNSEALABLE : 0;
    bits |= sealant && window < 0 ? NO_WINDOW : 0;
    bits |= sealant && sealantUm < settings.leastSealantUm() ? TOO_THIN : 0;
    return bits;
  }
}
