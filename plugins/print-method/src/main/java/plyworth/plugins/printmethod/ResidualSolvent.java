package plyworth.plugins.printmethod;

/** What a limit on solvent left in the web asks of the dryer, and what it means for the food. */
public final class ResidualSolvent {

  private ResidualSolvent() {}

  /**
   * Share of the solvent put down that may stay: limit/input.
   *
   * @param limit mg/m²
   * @param input g/m²
   */
  public static double retainedShare(double limit, double input) {
    return limit / 1000 / input;
  }

  /**
   * Concentration in the food when all of it moves there, mg/kg.
   *
   * @param residual mg/m²
   * @param area m²
   * @param food kg
   */
  public static double inFood(double residual, double area, double food) {
    return residual * area / food;
  }

  /**
   * Concentration of a substance in the dry ink that reaches a limit in the food, mg/kg.
   *
   * @param limit mg per kg of food
   * @param area m²
   * @param food kg
   * @param dry dry ink, g/m²
   */
  public static double allowedInInk(double limit, double area, double food, double dry) {
    return limit * food / area / dry * 1000;
  }
}
