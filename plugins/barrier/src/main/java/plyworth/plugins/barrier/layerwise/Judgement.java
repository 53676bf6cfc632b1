package plyworth.plugins.barrier.layerwise;

import static plyworth.plugins.barrier.pack.BarrierCriteria.DOES_NOT_KEEP_BIT;
import static plyworth.plugins.barrier.pack.BarrierCriteria.VOLATILE_LOSS_BIT;

/**
 * What is said of a pack by what each of its {@link Way}s says, looked up by a code of two bits a
 * way, so that many packs are gone through without a branch. A pack that fails by one way for
 * certain is settled, unless something of it is unknown or an alcohol must be told apart.
 *
 * @param fewest days, by code; those up to the cap where nothing fails for certain
 * @param most days, by code
 * @param blocked bits of the rules that block, by code
 * @param open 1 for a pack that must be looked at more closely, by code
 */
record Judgement(double[] fewest, double[] most, long[] blocked, int[] open) {

  /** What a way says; that the pack keeps up to the cap is 0. */
  static final int OPEN = 1;

  static final int FAILS = 2;
  static final int UNKNOWN = 3;

  /**
   * The judgement of some ways.
   *
   * @param loses whether a loss is asked for, which is never settled for a pack that may keep
   * @param cap days beyond which no pack is told apart
   * @param failsBefore days before which a pack fails
   */
  static Judgement of(Way[] ways, boolean loses, double cap, double failsBefore) {
    int codes = 1 << 2 * ways.length;
    Judgement judgement =
        new Judgement(new double[codes], new double[codes], new long[codes], new int[codes]);
    for (int code = 0; code < codes; code++) {
      boolean failed = failed(ways, code);
      judgement.fewest[code] = failed ? 0 : cap;
      judgement.most[code] = failed ? Math.min(cap, failsBefore) : cap;
      judgement.blocked[code] = failed ? bits(ways, code) : 0;
      judgement.open[code] = failed || code == 0 && !loses ? 0 : 1;
    }
    return judgement;
  }

  private static int said(int code, int way) {
    return code >> 2 * way & UNKNOWN;
  }

  private static boolean failed(Way[] ways, int code) {
    boolean fails = false;
    for (int w = 0; w < ways.length; w++) {
      int said = said(code, w);
      if (said == UNKNOWN || said == OPEN && ways[w].mixed()) {
        return false;
      }
      fails |= said == FAILS;
    }
    return fails;
  }

  private static long bits(Way[] ways, int code) {
    long bits = DOES_NOT_KEEP_BIT;
    for (int w = 0; w < ways.length; w++) {
      bits |= said(code, w) == FAILS && ways[w].mixed() ? VOLATILE_LOSS_BIT : 0;
    }
    return bits;
  }
}
