package plyworth.plugins.barrier;

/**
 * One layer that humidity moves, as far as it is known: between which ends its resistance to water
 * lies, and the humidity at its faces. Reused from laminate to laminate.
 */
final class WetLayer {

  /** No layer: nothing to resist. */
  private static final int ABSENT = -1;

  private int number = ABSENT;
  private Hygroscopic kind;

  /** Resistance to water where its curve is 1. */
  double water;

  /** Resistance to oxygen where its curve is 1. */
  double oxygen;

  /** Resistance to water that lies outside it, other such layers at their reference. */
  double outside;

  /** Ends of the resistance to water. */
  double low;

  double high;

  /** Ends of the humidity at the outer and inner face. */
  double outerLow;

  double outerHigh;
  double innerLow;
  double innerHigh;

  /** Nothing stands here. */
  void absent() {
    number = ABSENT;
    water = 0;
    oxygen = 0;
    outside = 0;
    low = 0;
    high = 0;
  }

  /** A layer of a kind stands here, anywhere between two humidities. */
  void present(HygroscopicKinds kinds, double index, double driest, double dampest) {
    number = (int) index;
    kind = kinds.kinds().get(number);
    outerLow = driest;
    innerLow = driest;
    outerHigh = dampest;
    innerHigh = dampest;
    low = water * kind.loosest();
    high = water * kind.tightest();
  }

  /** Whether a layer stands here. */
  boolean stands() {
    return number != ABSENT;
  }

  /** Takes the ends of the resistance from the ends of humidity: damper is looser. */
  void narrow() {
    double slack = kind.conducts().error();
    low = water * (1 - slack) / kind.conducts().mean(outerHigh, innerHigh);
    high = water * (1 + slack) / kind.conducts().mean(outerLow, innerLow);
  }

  /** Least resistance to oxygen. */
  double oxygenLow() {
    return stands() ? oxygen * (1 - slack()) * mean(outerHigh, innerHigh) : 0;
  }

  /** Largest resistance to oxygen. */
  double oxygenHigh() {
    return stands() ? oxygen * (1 + slack()) * mean(outerLow, innerLow) : 0;
  }

  private double slack() {
    return 2 * (kind.conducts().error() + kind.resists().error());
  }

  private double mean(double one, double other) {
    return kind.resists().mean(one, other) / kind.conducts().mean(one, other);
  }
}
