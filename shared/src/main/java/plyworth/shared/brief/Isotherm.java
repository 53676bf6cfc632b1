package plyworth.shared.brief;

/**
 * How much water a product holds at a water activity, on dry basis (g water per g dry product), at
 * one temperature or at any.
 */
public sealed interface Isotherm extends Sorption {

  /** Itself: it holds at whatever temperature it is used. */
  @Override
  default Isotherm at(double celsius) {
    return this;
  }

  /**
   * Moisture content in g/g dry at a water activity from 0 to 1; NaN where the form does not hold.
   */
  double moisture(double activity);

  /** Slope dm/da in g/g per unit of water activity; NaN where the form does not hold. */
  double slope(double activity);

  /**
   * A straight line: m = slope · a.
   *
   * @param slope g/g dry per unit of water activity
   */
  record Linear(double slope) implements Isotherm {
    /** Checks the slope. */
    public Linear {
      Check.positive("the slope of the isotherm", slope, "g/g");
    }

    @Override
    public double moisture(double activity) {
      return slope * activity;
    }

    @Override
    public double slope(double activity) {
      return slope;
    }
  }

  /**
   * The Guggenheim, Anderson and de Boer form: m = m0·C·k·a / [(1 − k·a)(1 − k·a + C·k·a)].
   *
   * @param m0 monolayer moisture, g/g dry
   * @param c sorption constant C
   * @param k multilayer constant
   */
  record Gab(double m0, double c, double k) implements Isotherm {
    /** Checks the constants. */
    public Gab {
      Check.positive("the monolayer moisture", m0, "g/g");
      Check.positive("the GAB constant C", c, "");
      Check.positive("the GAB constant k", k, "");
    }

    @Override
    public double moisture(double activity) {
      double ka = k * activity;
      return ka < 1 ? m0 * c * ka / ((1 - ka) * (1 - ka + c * ka)) : Double.NaN;
    }

    @Override
    public double slope(double activity) {
      double ka = k * activity;
      double d = (1 - ka) * (1 - ka + c * ka);
      return ka < 1 ? m0 * c * k * (1 + (c - 1) * ka * ka) / (d * d) : Double.NaN;
    }
  }

  /**
   * Crystals that take up nothing below their deliquescence point and dissolve above it.
   *
   * @param deliquescence water activity of the saturated solution, 0 to 1
   * @param allowedUptake water that may be taken up above it before the product is spoilt, g/g dry
   */
  record Deliquescent(double deliquescence, double allowedUptake) implements Isotherm {
    /** Checks both figures. */
    public Deliquescent {
      Check.between("the deliquescence point", deliquescence, 0, 1, "");
      Check.positive("the allowed uptake", allowedUptake, "g/g");
    }

    @Override
    public double moisture(double activity) {
      return activity < deliquescence ? 0 : Double.NaN;
    }

    @Override
    public double slope(double activity) {
      return activity < deliquescence ? 0 : Double.NaN;
    }
  }
}
