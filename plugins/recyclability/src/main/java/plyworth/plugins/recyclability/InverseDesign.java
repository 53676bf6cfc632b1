package plyworth.plugins.recyclability;

/**
 * What a structure must change to reach a share: the share formula m/(m + rest) solved for one
 * mass.
 */
final class InverseDesign {

  private InverseDesign() {}

  /**
   * Mass of the target material that reaches a share beside a given rest: rest·s/(1 − s).
   *
   * @param rest everything but the target material, g/m²
   * @param share wanted share, below 1
   * @return g/m²
   */
  static double targetFor(double rest, double share) {
    return rest * share / (1 - share);
  }

  /**
   * Most of everything else beside a given target mass: m·(1 − s)/s.
   *
   * @param target mass of the target material, g/m²
   * @param share wanted share, above 0
   * @return g/m²
   */
  static double restFor(double target, double share) {
    return target * (1 - share) / share;
  }

  /**
   * Largest gauge of a barrier layer that keeps to a mass share, when it takes the place of other
   * polymer at constant total gauge: p·M₀/(ρ − p·(ρ − ρ₀)), with M₀ the grammage without barrier.
   *
   * @param share most mass share p
   * @param grammageWithout M₀, g/m²
   * @param density ρ of the barrier, g/cm³
   * @param replaced ρ₀ of the polymer it replaces, g/cm³
   * @return µm
   */
  static double barrierGaugeUm(
      double share, double grammageWithout, double density, double replaced) {
    return share * grammageWithout / (density - share * (density - replaced));
  }
}
