package plyworth.plugins.recyclability;

import java.util.Arrays;

/**
 * Bounds of the measures when every component of the state lies between two figures.
 *
 * <p>A share m/(m + rest) grows with m and falls with the rest, so its ends are low/(low + rest's
 * high) and high/(high + rest's low).
 */
final class MeasureBounds {

  private static final int FIBRE = Group.FIBRE.ordinal();
  private static final int PE = Group.POLYETHYLENE.ordinal();
  private static final int PP = Group.POLYPROPYLENE.ordinal();
  private static final int FOIL = Group.FOIL.ordinal();
  private static final int VAPOUR = Group.VAPOUR.ordinal();

  /** The measure that is the share of a group; null where there is none. */
  private static final Measure[] SHARES =
      Arrays.stream(Group.values()).map(MeasureBounds::share).toArray(Measure[]::new);

  private MeasureBounds() {}

  /**
   * Writes the bounds of what {@link Measures#fill} writes.
   *
   * @param sl lower ends of the state
   * @param sh upper ends of the state
   */
  static void fill(double[] sl, double[] sh, double[] low, double[] high) {
    double totalLow = total(sl);
    double totalHigh = total(sh);
    for (int k = 0; k < Group.COUNT; k++) {
      if (SHARES[k] != null) {
        span(SHARES[k], sl[k], sh[k], totalLow, totalHigh, low, high);
      }
    }
    double plasticLow = sl[PE] + sl[PP] + Measures.otherPlastics(sl);
    double plasticHigh = sh[PE] + sh[PP] + Measures.otherPlastics(sh);
    span(
        Measure.NON_FIBRE,
        Math.max(0, totalLow - sl[FIBRE]),
        totalHigh - sh[FIBRE],
        totalLow,
        totalHigh,
        low,
        high);
    span(Measure.PLASTIC_LAYERS, plasticLow, plasticHigh, totalLow, totalHigh, low, high);
    span(Measure.POLYOLEFIN, sl[PE] + sl[PP], sh[PE] + sh[PP], totalLow, totalHigh, low, high);
    int main = Measure.MAIN_POLYOLEFIN.ordinal();
    low[main] = Math.max(low[Measure.POLYETHYLENE.ordinal()], low[Measure.POLYPROPYLENE.ordinal()]);
    high[main] =
        Math.max(high[Measure.POLYETHYLENE.ordinal()], high[Measure.POLYPROPYLENE.ordinal()]);
    low[Measure.VAPOUR_GAUGE.ordinal()] = sl[VAPOUR] / Measures.ALUMINIUM_DENSITY;
    high[Measure.VAPOUR_GAUGE.ordinal()] = sh[VAPOUR] / Measures.ALUMINIUM_DENSITY;
    leads(sl, sh, plasticLow, plasticHigh, Condition.TOLERANCE * totalHigh, low, high);
    sides(sl, sh, plasticLow, plasticHigh, low, high);
  }

  private static Measure share(Group group) {
    return switch (group) {
      case FIBRE -> Measure.FIBRE;
      case POLYETHYLENE -> Measure.POLYETHYLENE;
      case POLYPROPYLENE -> Measure.POLYPROPYLENE;
      case POLYESTER -> Measure.POLYESTER;
      case POLYAMIDE -> Measure.POLYAMIDE;
      case EVOH -> Measure.EVOH;
      case CHLORINATED -> Measure.CHLORINATED;
      case FOREIGN -> Measure.FOREIGN_POLYMER;
      case FOIL -> Measure.FOIL;
      case VAPOUR -> Measure.VAPOUR_METAL;
      case INK -> Measure.INK;
      case COATING, OTHER -> null;
    };
  }

  private static double total(double[] s) {
    double total = 0;
    for (int k = 0; k < Group.COUNT; k++) {
      total += s[k];
    }
    return total;
  }

  private static void span(
      Measure measure,
      double partLow,
      double partHigh,
      double totalLow,
      double totalHigh,
      double[] low,
      double[] high) {
    double restLow = Math.max(0, totalLow - partLow);
    double restHigh = Math.max(0, totalHigh - partHigh);
    low[measure.ordinal()] = partLow > 0 ? partLow / (partLow + restHigh) : 0;
    high[measure.ordinal()] = partHigh > 0 ? partHigh / (partHigh + restLow) : 0;
  }

  private static void leads(
      double[] sl,
      double[] sh,
      double plasticLow,
      double plasticHigh,
      double slack,
      double[] low,
      double[] high) {
    double metalLow = sl[FOIL] + sl[VAPOUR];
    double metalHigh = sh[FOIL] + sh[VAPOUR];
    flags(
        Measure.PAPER_LEADS,
        sl[FIBRE] > 0 && sl[FIBRE] >= Math.max(plasticHigh, metalHigh),
        sh[FIBRE] > 0 && sh[FIBRE] >= Math.max(plasticLow, metalLow) - slack,
        low,
        high);
    flags(
        Measure.PLASTIC_LEADS,
        plasticLow - slack > sh[FIBRE] && plasticLow >= metalHigh,
        plasticHigh > sl[FIBRE] && plasticHigh >= metalLow - slack,
        low,
        high);
    flags(
        Measure.POLYETHYLENE_LEADS,
        sl[PE] > 0 && sl[PE] >= Math.max(sh[PP], Measures.heaviestOther(sh)),
        sh[PE] > 0 && sh[PE] >= Math.max(sl[PP], Measures.heaviestOther(sl)),
        low,
        high);
  }

  private static void sides(
      double[] sl,
      double[] sh,
      double plasticLow,
      double plasticHigh,
      double[] low,
      double[] high) {
    boolean must = sl[FIBRE] > 0 && plasticLow > 0;
    boolean may = sh[FIBRE] > 0 && plasticHigh > 0;
    int outer = Ledger.OUTER_FACE;
    int inner = Ledger.INNER_FACE;
    boolean both = sl[outer] >= Ledger.POLYMER_FACE && sl[inner] >= Ledger.POLYMER_FACE;
    boolean mayBoth = sh[outer] >= Ledger.POLYMER_FACE && sh[inner] >= Ledger.POLYMER_FACE;
    low[Measure.POLYMER_SIDES.ordinal()] = must ? (both ? 2 : 1) : 0;
    high[Measure.POLYMER_SIDES.ordinal()] = may ? (mayBoth ? 2 : 1) : 0;
  }

  private static void flags(
      Measure measure, boolean must, boolean may, double[] low, double[] high) {
    low[measure.ordinal()] = must ? 1 : 0;
    high[measure.ordinal()] = may ? 1 : 0;
  }
}
