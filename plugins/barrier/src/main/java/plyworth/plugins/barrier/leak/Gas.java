package plyworth.plugins.barrier.leak;

/**
 * A gas or vapour in still air at 1 atm.
 *
 * @param diffusivity its diffusion coefficient, m²/s
 * @param atCelsius temperature at which that holds, °C
 * @param molarMass g/mol
 */
public record Gas(double diffusivity, double atCelsius, double molarMass) {

  /** Oxygen (from memory). */
  public static final Gas OXYGEN = new Gas(2.05e-5, 23, 31.998);

  /** Water vapour (from memory). */
  public static final Gas WATER = new Gas(2.5e-5, 25, 18.0153);

  /** Vapour of isopropanol (from memory). */
  public static final Gas ISOPROPANOL = new Gas(1.0e-5, 25, 60.096);

  /** Vapour of ethanol (from memory). */
  public static final Gas ETHANOL = new Gas(1.2e-5, 25, 46.069);

  private static final double GAS_CONSTANT = 8.314462618;
  private static final double SECONDS_PER_DAY = 86_400;
  private static final double ZERO_CELSIUS = 273.15;
  private static final double ATMOSPHERE_BAR = 1.01325;

  /** Diffusion in gases rises with the power 1.75 of temperature (from memory). */
  private static final double POWER = 1.75;

  private double cubicMetresPerDay(Channel channel, double celsius) {
    double warmer = (celsius + ZERO_CELSIUS) / (atCelsius + ZERO_CELSIUS);
    return diffusivity
        * Math.pow(warmer, POWER)
        * channel.crossSectionOverLengthM()
        * SECONDS_PER_DAY;
  }

  /** What a channel lets through, cm³ at 0 °C and 1 atm per day and bar. */
  public double cm3PerDayAndBar(Channel channel, double celsius) {
    return cubicMetresPerDay(channel, celsius)
        * 1e6
        * ZERO_CELSIUS
        / (celsius + ZERO_CELSIUS)
        / ATMOSPHERE_BAR;
  }

  /** What a channel lets through, g per day and pascal (ideal gas). */
  public double gramsPerDayAndPascal(Channel channel, double celsius) {
    return cubicMetresPerDay(channel, celsius)
        * molarMass
        / (GAS_CONSTANT * (celsius + ZERO_CELSIUS));
  }
}
