package plyworth.plugins.barrier.permeation;

/** What passes through a laminate. */
public enum Permeant {
  /** Oxygen: cm³ per m², day and bar; measured at 23 °C. */
  OXYGEN("o2", 23, 1, "cm3/(m2.day.bar)"),
  /**
   * Water vapour: g per m² and day; measured at 38 °C with 90 % RH on one side, none on the other.
   */
  WATER("wv", 38, 1, "g/(m2.day)"),
  /** Isopropanol: g per m² and day from saturated vapour into none; taken to hold at 25 °C. */
  ALCOHOL("ipa", 25, 1000, "g/(m2.day)"),
  /** Ethanol, in the same units. */
  ETHANOL("ethanol", 25, 1000, "g/(m2.day)");

  /** Relative humidity at which water is measured, 0 to 1. */
  public static final double WATER_MEASURED_AT = 0.9;

  /** Relative humidity for which flat oxygen rates are quoted, 0 to 1. */
  public static final double OXYGEN_QUOTED_AT = 0.5;

  private final String prefix;
  private final double measuredAtC;
  private final double micrometres;
  private final String rateUnit;

  Permeant(String prefix, double measuredAtC, double micrometres, String rateUnit) {
    this.prefix = prefix;
    this.measuredAtC = measuredAtC;
    this.micrometres = micrometres;
    this.rateUnit = rateUnit;
  }

  /** Id of the property for layers that scale with gauge, such as {@code ethanol-permeability}. */
  public String permeabilityId() {
    return prefix + "-permeability";
  }

  /** Id of the property for layers that are given as a whole, such as {@code ethanol-rate}. */
  public String rateId() {
    return prefix + "-rate";
  }

  /** Id of the activation energy; alcohol takes a parameter instead. */
  String activationId() {
    return prefix + "-activation";
  }

  /** Id of the diffusion coefficient, such as {@code ethanol-diffusivity}. */
  public String diffusivityId() {
    return prefix + "-diffusivity";
  }

  /** Whether it is an alcohol, mixed with water that moves as well. */
  public boolean alcohol() {
    return this == ALCOHOL || this == ETHANOL;
  }

  /** Temperature of the measurement, °C. */
  public double measuredAtC() {
    return measuredAtC;
  }

  /** Micrometres in the length unit of the permeability. */
  double micrometres() {
    return micrometres;
  }

  /** Unit of a transmission rate as measured, plain spelling. */
  public String rateUnit() {
    return rateUnit;
  }

  /** Unit of a layer's transmission in the pack, plain spelling. */
  public String packUnit() {
    return this == WATER ? "g/(m2.day.Pa)" : rateUnit;
  }

  /** Key of the name in the texts. */
  public String key() {
    return "permeant." + prefix;
  }
}
