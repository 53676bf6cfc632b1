package plyworth.plugins.barrier.permeation;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/**
 * An alcohol that mixes with water in all proportions, with the constants of its vapour.
 *
 * <p>Antoine: log10(p/mmHg) = A − B/(C + t/°C). Wilson: energies in cal/mol, molar volumes in
 * cm³/mol. From memory; those of isopropanol were recovered from an open interaction-parameter data
 * set, those of ethanol place the azeotrope at 1 atm within 0.5 % w/w and 0.1 K.
 */
public enum Alcohol {
  /** 2-propanol. */
  ISOPROPANOL(
      Set.of("isopropanol", "2-propanol"),
      Permeant.ALCOHOL,
      60.096,
      new Antoine(8.11778, 1580.92, 219.61),
      new Wilson(76.92, 437.98, 1238.00)),
  /** Ethanol. */
  ETHANOL(
      Set.of("ethanol"),
      Permeant.ETHANOL,
      46.069,
      new Antoine(8.20417, 1642.89, 230.300),
      new Wilson(58.68, 325.0757, 953.2792));

  /** Constants of the Antoine equation. */
  record Antoine(double a, double b, double c) {

    private static final double PASCAL_PER_MMHG = 133.322368;

    /** Water. */
    static final Antoine WATER = new Antoine(8.07131, 1730.63, 233.426);

    /** Saturated vapour pressure, Pa. */
    double pascal(double celsius) {
      return Math.pow(10, a - b / (c + celsius)) * PASCAL_PER_MMHG;
    }
  }

  /**
   * Constants of the Wilson equation in water.
   *
   * @param volume molar volume of the alcohol, cm³/mol
   * @param a12 energy of alcohol with water, cal/mol
   * @param a21 energy of water with alcohol, cal/mol
   */
  record Wilson(double volume, double a12, double a21) {}

  private final Set<String> names;
  private final Permeant permeant;
  private final double molarMass;
  private final Antoine antoine;
  private final Wilson wilson;

  Alcohol(Set<String> names, Permeant permeant, double molarMass, Antoine antoine, Wilson wilson) {
    this.names = names;
    this.permeant = permeant;
    this.molarMass = molarMass;
    this.antoine = antoine;
    this.wilson = wilson;
  }

  /** The alcohol of a generic name, if its constants are known. */
  public static Optional<Alcohol> named(String substance) {
    return Arrays.stream(values()).filter(a -> a.names.contains(substance)).findFirst();
  }

  /** What passes through the layers. */
  public Permeant permeant() {
    return permeant;
  }

  /** g/mol. */
  double molarMass() {
    return molarMass;
  }

  /** Vapour pressure of the pure liquid. */
  Antoine antoine() {
    return antoine;
  }

  /** Activities in water. */
  Wilson wilson() {
    return wilson;
  }
}
