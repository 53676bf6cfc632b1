package plyworth.shared.brief;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Where packs are stored: one constant climate, or a round of seasons that starts over when it is
 * through. Packs are filled at the beginning of the first season.
 *
 * @param name name on screens, for example {@code zone IVb 30 °C 75 % RH}
 * @param seasons spells of constant climate, at least one
 */
public record Climate(String name, List<Season> seasons) {

  /** Activation energy over the gas constant, K: 83.144 kJ/mol (USP chapter 1160). */
  private static final double MEAN_KINETIC_K = 10_000;

  private static final double ZERO_C = 273.15;

  /**
   * A spell of constant climate.
   *
   * @param days how long it lasts, days
   * @param temperatureC °C, from −40 to 70
   * @param humidityPercent relative humidity, %
   */
  public record Season(double days, double temperatureC, double humidityPercent) {

    /** Checks the figures. */
    public Season {
      Check.positive("the length of the season", days, "days");
      Check.between("the storage temperature", temperatureC, -40, 70, "°C");
      Check.between("the storage humidity", humidityPercent, 0, 100, "%");
    }
  }

  /** Copies the seasons. */
  public Climate {
    seasons = List.copyOf(seasons);
    if (seasons.isEmpty()) {
      throw new IllegalArgumentException("the climate has no season");
    }
  }

  /** A constant climate. */
  public Climate(String name, double temperatureC, double humidityPercent) {
    this(name, List.of(new Season(365, temperatureC, humidityPercent)));
  }

  /** Whether it never changes. */
  public boolean constant() {
    return seasons.stream()
        .allMatch(
            s ->
                s.temperatureC() == seasons.get(0).temperatureC()
                    && s.humidityPercent() == seasons.get(0).humidityPercent());
  }

  /** The warmest temperature, °C; that of a constant climate. */
  public double temperatureC() {
    return temperatures().getMax();
  }

  /** Temperatures of the seasons, °C. */
  public DoubleSummaryStatistics temperatures() {
    return seasons.stream().mapToDouble(Season::temperatureC).summaryStatistics();
  }

  /** Relative humidities of the seasons, %. */
  public DoubleSummaryStatistics humidities() {
    return seasons.stream().mapToDouble(Season::humidityPercent).summaryStatistics();
  }

  /** Relative humidity averaged over time, %; that of a constant climate. */
  public double humidityPercent() {
    return constant() ? seasons.get(0).humidityPercent() : mean(Season::humidityPercent);
  }

  /**
   * Mean kinetic temperature, °C: that constant temperature at which a change with 83.144 kJ/mol
   * goes as far as in the whole round, T = 10 000 K / −ln(mean of exp(−10 000 K / T)) (USP chapter
   * 1160).
   */
  public double meanKineticC() {
    double mean = mean(s -> Math.exp(-MEAN_KINETIC_K / (s.temperatureC() + ZERO_C)));
    return MEAN_KINETIC_K / -Math.log(mean) - ZERO_C;
  }

  private double mean(ToDoubleFunction<Season> figure) {
    double days = seasons.stream().mapToDouble(Season::days).sum();
    return seasons.stream().mapToDouble(s -> s.days() * figure.applyAsDouble(s)).sum() / days;
  }
}
