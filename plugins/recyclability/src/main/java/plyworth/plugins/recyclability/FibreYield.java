package plyworth.plugins.recyclability;

import plyworth.shared.scoring.ScoringContext;

/**
 * Fibre that a repulping gives back, estimated from masses.
 *
 * <p>With n the share of everything but fibre and ink, f that of fibre: reject = n·(1 + κ), yield =
 * f·(1 − λ) − κ·n, not below 0. κ is the fibre carried out per non-paper mass, larger with polymer
 * on both sides and with foil; λ is the loss of fines and dissolved matter. An engineering
 * assumption that laboratory results must calibrate; the rank order is safer than the value.
 *
 * @param loss λ
 * @param carryOut κ with polymer on one side at most and without foil
 * @param twoSided what polymer on both sides adds to κ
 * @param foil what foil adds to κ
 */
record FibreYield(double loss, double carryOut, double twoSided, double foil) {

  static FibreYield of(ScoringContext context) {
    return new FibreYield(
        context.parameter("fines-loss"),
        context.parameter("carry-out"),
        context.parameter("carry-out-two-sided"),
        context.parameter("carry-out-foil"));
  }

  /** Yield, 0 to 1; 0 without fibre. */
  double of(double[] m) {
    return share(m[Measure.FIBRE.ordinal()], foreign(m), kappa(m));
  }

  /** Total dry reject, 0 to 1; NaN without fibre, where nothing is repulped. */
  double reject(double[] m) {
    return m[Measure.FIBRE.ordinal()] > 0 ? foreign(m) * (1 + kappa(m)) : Double.NaN;
  }

  /** Writes the bounds of the yield. */
  void bounds(double[] low, double[] high) {
    int at = Measure.FIBRE_YIELD.ordinal();
    int fibre = Measure.FIBRE.ordinal();
    int ink = Measure.INK.ordinal();
    int nonFibre = Measure.NON_FIBRE.ordinal();
    double foreignLow = Math.max(0, low[nonFibre] - high[ink]);
    double foreignHigh = Math.max(0, high[nonFibre] - low[ink]);
    low[at] = share(low[fibre], foreignHigh, kappa(high));
    high[at] = share(high[fibre], foreignLow, kappa(low));
  }

  private double share(double fibre, double foreign, double kappa) {
    return Math.max(0, fibre * (1 - loss) - kappa * foreign);
  }

  private double kappa(double[] m) {
    return carryOut
        + (m[Measure.POLYMER_SIDES.ordinal()] >= 2 ? twoSided : 0)
        + (m[Measure.FOIL.ordinal()] > 0 ? foil : 0);
  }

  private static double foreign(double[] m) {
    return Math.max(0, m[Measure.NON_FIBRE.ordinal()] - m[Measure.INK.ordinal()]);
  }
}
