package plyworth.plugins.barrier.permeation;

/** How permeability follows temperature. */
public final class Arrhenius {

  /** Gas constant, J/(mol·K). */
  public static final double GAS_CONSTANT = 8.314462618;

  /** 0 °C in kelvin. */
  public static final double ZERO_C = 273.15;

  private Arrhenius() {}

  /**
   * Factor from one temperature to another: exp[−(E/R)(1/T2 − 1/T1)], for a permeability per unit
   * of partial pressure (Arrhenius; standard).
   *
   * @param activation E in kJ/mol; not read when the temperatures are equal
   * @param fromC °C
   * @param toC °C
   */
  public static double factor(double activation, double fromC, double toC) {
    if (fromC == toC) {
      return 1;
    }
    double step = 1 / (toC + ZERO_C) - 1 / (fromC + ZERO_C);
    return Math.exp(-activation * 1000 / GAS_CONSTANT * step);
  }
}
