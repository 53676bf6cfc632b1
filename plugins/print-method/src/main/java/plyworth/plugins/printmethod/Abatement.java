package plyworth.plugins.printmethod;

/**
 * What keeps solvent out of the air.
 *
 * <p>Emission = input · (1 − r) · (1 − K·D): capture and destruction multiply (mass balance).
 *
 * @param capture share K of the evaporated solvent that reaches the treatment
 * @param destruction share D of the captured solvent that is destroyed or recovered
 */
public record Abatement(double capture, double destruction) {

  /** Nothing is captured. */
  public static final Abatement ABSENT = new Abatement(0, 0);

  /** Overall control K·D. */
  public double overall() {
    return capture * destruction;
  }

  /**
   * Solvent to the air, in the unit of the input.
   *
   * @param input solvent put down
   * @param retained share r kept in the web
   */
  public double emitted(double input, double retained) {
    return input * (1 - retained) * (1 - overall());
  }

  /**
   * Overall control at which a controlled input emits as much as an uncontrolled one: 1 − u/c, at
   * least 0.
   *
   * @param controlled input under control
   * @param uncontrolled input without control
   */
  public static double tie(double controlled, double uncontrolled) {
    return Math.max(0, 1 - uncontrolled / controlled);
  }
}
