package plyworth.plugins.printmethod;

/**
 * Thermal oxidiser with internal heat recovery.
 *
 * @param chamber temperature of the chamber, °C
 * @param inlet temperature of the exhaust that enters, °C
 * @param recovery share of the heat recovered, 0 to below 1
 */
public record Oxidiser(double chamber, double inlet, double recovery) {

  /** Heat capacity of exhaust air per normal volume, kJ/(Nm³·K) (from memory). */
  static final double CAPACITY = 1.35;

  /** Carbon dioxide of burnt natural gas, kg/kWh (published national conversion factors, 2024). */
  static final double GAS_CARBON = 0.18231;

  /** Solvent concentration from which no fuel is needed, g/Nm³: ρc_p·ΔT·(1 − η)/LHV. */
  public double selfSustaining(double lhv) {
    return perVolume() / lhv;
  }

  /**
   * Fuel, kWh: heat that the gas needs less what burning solvent gives, at least 0.
   *
   * @param volume gas treated, Nm³
   * @param burnt solvent burnt, kg
   * @param lhv lower heating value of the solvent, MJ/kg
   */
  public double fuel(double volume, double burnt, double lhv) {
    return Math.max(0, balance(volume, burnt, lhv));
  }

  /** Heat to spare, kWh, at least 0; arguments as in {@link #fuel}. */
  public double surplus(double volume, double burnt, double lhv) {
    return Math.max(0, -balance(volume, burnt, lhv));
  }

  private double balance(double volume, double burnt, double lhv) {
    return (perVolume() * volume / 1000 - burnt * lhv) / Drying.MJ_PER_KWH;
  }

  private double perVolume() {
    return CAPACITY * (chamber - inlet) * (1 - recovery);
  }
}
