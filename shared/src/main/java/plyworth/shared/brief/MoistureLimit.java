package plyworth.shared.brief;

/**
 * How moisture spoils a product.
 *
 * @param sorption water held against water activity
 * @param dryMassG dry mass in one pack, g
 * @param initialActivity water activity when packed
 * @param criticalActivity water activity at which it is spoilt; not used by {@link
 *     Isotherm.Deliquescent}
 * @param spoiltBy which way the limit lies
 */
public record MoistureLimit(
    Sorption sorption,
    double dryMassG,
    double initialActivity,
    double criticalActivity,
    Way spoiltBy) {

  private static final double ROOM_C = 25;

  /** Which way a limit on moisture lies. */
  public enum Way {
    /** The product is spoilt at its limit and above: it cakes, softens, dissolves. */
    MOISTENING,
    /** The product is spoilt at its limit and below: it hardens, crumbles. */
    DRYING;

    /**
     * The way from one activity to another: what a limit was taken to mean where nothing is said.
     * Crystals that dissolve are spoilt by moistening, wherever they start.
     */
    public static Way between(Sorption sorption, double initial, double critical) {
      return dissolves(sorption) || initial <= critical ? MOISTENING : DRYING;
    }
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException when one of them is out of its bounds, or beyond what the
   *     isotherm of a known product holds for, or when crystals that dissolve are to be spoilt by
   *     drying
   */
  public MoistureLimit {
    Check.positive("the dry mass", dryMassG, "g");
    Check.between("the initial water activity", initialActivity, 0, 1, "");
    Check.between("the critical water activity", criticalActivity, 0, 1, "");
    if (sorption instanceof KnownProduct product) {
      product.refuseBeyond(Math.max(initialActivity, criticalActivity));
    }
    if (spoiltBy == Way.DRYING && dissolves(sorption)) {
      throw new IllegalArgumentException(
          "crystals that dissolve are spoilt by moistening, not by drying; give another isotherm,"
              + " or the other way");
    }
  }

  /** A limit that lies the way from the initial activity to the critical one. */
  public MoistureLimit(
      Sorption sorption, double dryMassG, double initialActivity, double criticalActivity) {
    this(
        sorption,
        dryMassG,
        initialActivity,
        criticalActivity,
        Way.between(sorption, initialActivity, criticalActivity));
  }

  private static boolean dissolves(Sorption sorption) {
    boolean known = !(sorption instanceof KnownProduct product) || product.law().isPresent();
    return known && sorption.at(ROOM_C) instanceof Isotherm.Deliquescent;
  }

  /** The isotherm at a storage temperature in °C. */
  public Isotherm isotherm(double celsius) {
    return sorption.at(celsius);
  }

  /**
   * Water activity that the product must not reach at a temperature: that of deliquescence for
   * crystals, the critical one for all else.
   */
  public double limitingActivity(double celsius) {
    return isotherm(celsius) instanceof Isotherm.Deliquescent crystals
        ? crystals.deliquescence()
        : criticalActivity;
  }

  /** How far the product as filled lies beyond that activity; negative while it has room left. */
  public double beyondBy(double celsius) {
    double excess = initialActivity - limitingActivity(celsius);
    return spoiltBy == Way.MOISTENING ? excess : -excess;
  }
}
