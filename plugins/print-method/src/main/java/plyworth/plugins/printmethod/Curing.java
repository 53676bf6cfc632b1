package plyworth.plugins.printmethod;

/** Energy that radiation curing takes, kWh per 1000 m² (power over area; analytic). */
public final class Curing {

  private Curing() {}

  /**
   * Lamps over every deck.
   *
   * @param lamps lamps in the web's way
   * @param power electric power of a lamp per width, W/cm
   * @param speed web speed, m/min
   */
  public static double lamps(double lamps, double power, double speed) {
    double kilowattsPerMetre = lamps * power * 100 / 1000;
    return kilowattsPerMetre / (speed * 60) * 1000;
  }
}
