package plyworth.shared.brief;

/**
 * A constant storage climate.
 *
 * @param name name on screens, for example {@code zone IVb 30 °C 75 % RH}
 * @param temperatureC °C, from −40 to 70
 * @param humidityPercent relative humidity, %
 */
public record Climate(String name, double temperatureC, double humidityPercent) {

  /** Checks the figures. */
  public Climate {
    Check.between("the storage temperature", temperatureC, -40, 70, "°C");
    Check.between("the storage humidity", humidityPercent, 0, 100, "%");
  }
}
