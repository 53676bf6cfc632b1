package plyworth.plugins.printmethod;

/** Whether ink spreads on a surface of a given treatment level. */
public final class Wetting {

  /** Shortfall that an in-line corona is trusted to lift, mN/m (common practice). */
  static final double WITHIN_CORONA = 2;

  /** How far the surface should lie above the surface tension of the ink, mN/m. */
  static final double ABOVE_INK = 10;

  private Wetting() {}

  /**
   * Judges a treatment level.
   *
   * <p>At or above the lower bound of the recommended levels: normal, but conditional where the
   * rule "surface energy at least 10 mN/m above the surface tension of the ink" is not met. Within
   * 2 mN/m below and with in-line corona: conditional. Else none.
   *
   * @param level of the surface, mN/m
   * @param required lower bound of the recommended levels, mN/m; NaN when none is known
   * @param inkTension surface tension of the ink, mN/m; NaN leaves that rule out
   * @param corona whether the press refreshes the treatment in line
   */
  public static Verdict judge(double level, double required, double inkTension, boolean corona) {
    if (Double.isNaN(level)) {
      return Verdict.UNKNOWN;
    }
    if (Double.isNaN(required)) {
      return Verdict.CONDITIONAL;
    }
    if (level >= required) {
      return level < inkTension + ABOVE_INK ? Verdict.CONDITIONAL : Verdict.NORMAL;
    }
    return corona && level >= required - WITHIN_CORONA ? Verdict.CONDITIONAL : Verdict.NONE;
  }
}
