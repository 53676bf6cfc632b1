package plyworth.plugins.barrier.permeation;

/** A hole in an impermeable sheet that a polymer covers on one face. */
final class CoveredPinhole {

  /** Up to this ratio of radius to cover the two-term image sum holds. */
  private static final double NARROW = 0.4;

  /** From this ratio on the cover over the hole is a plane sheet. */
  private static final double WIDE = 5;

  /**
   * Conductance over P·h at radius = cover: 4 / (1 − 2 ln 2 / π) is 13 % above a solution there.
   */
  private static final double AT_ONE = image(1) / 1.13;

  private CoveredPinhole() {}

  /**
   * Conductance of one hole, in the permeability's amount per day and unit of driving force.
   *
   * <p>Narrow holes (r/h ≤ 0.4): G = 4rP / [1 − (2 ln 2/π)(r/h)], disc in a plane with the first
   * images in the cover (analytic; a finite-volume solution agrees within 1.3 %). Wide holes (r/h ≥
   * 5): πr²P/h, plane sheet (analytic). Between, the logarithm of G runs straight against that of
   * r/h through the finite-volume figure at r/h = 1 (our choice: continuous and rising). Form of
   * the problem: Journal of Applied Packaging Research 13(2) art. 4.
   *
   * @param radius r, µm
   * @param cover h, µm
   * @param permeability P, amount·µm/(m²·day·force)
   */
  static double conductance(double radius, double cover, double permeability) {
    return shape(radius / cover) * cover * permeability * 1e-12;
  }

  /** G/(P·h) at a ratio of radius to cover. */
  private static double shape(double ratio) {
    if (ratio <= NARROW) {
      return image(ratio);
    }
    if (ratio >= WIDE) {
      return sheet(ratio);
    }
    return ratio < 1
        ? between(NARROW, image(NARROW), 1, AT_ONE, ratio)
        : between(1, AT_ONE, WIDE, sheet(WIDE), ratio);
  }

  private static double image(double ratio) {
    return 4 * ratio / (1 - 2 * Math.log(2) / Math.PI * ratio);
  }

  private static double sheet(double ratio) {
    return Math.PI * ratio * ratio;
  }

  private static double between(double x0, double y0, double x1, double y1, double x) {
    return y0 * Math.pow(y1 / y0, Math.log(x / x0) / Math.log(x1 / x0));
  }
}
