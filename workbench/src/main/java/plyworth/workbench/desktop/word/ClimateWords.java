package plyworth.workbench.desktop.word;

import java.util.DoubleSummaryStatistics;
import java.util.Locale;
import plyworth.shared.brief.Climate;
import plyworth.workbench.host.Digits;

/** How a climate is written on screen. */
public final class ClimateWords {

  private ClimateWords() {}

  /** Its name, and what the name leaves out. */
  public static String of(Climate climate) {
    return climate.constant() ? constant(climate) : seasons(climate);
  }

  private static String constant(Climate climate) {
    String figures =
        Words.of(
            "brief.climate.figures",
            Digits.sensible(climate.temperatureC()),
            Digits.sensible(climate.humidityPercent()));
    return climate.name().contains(figures)
        ? Words.of("brief.climate.constant", climate.name())
        : Words.of("brief.climate.constant-figures", climate.name(), figures);
  }

  private static String seasons(Climate climate) {
    DoubleSummaryStatistics celsius = climate.temperatures();
    DoubleSummaryStatistics humidity = climate.humidities();
    return Words.of(
        "brief.climate.seasons",
        climate.name(),
        climate.seasons().size(),
        Digits.sensible(celsius.getMin()),
        Digits.sensible(celsius.getMax()),
        Digits.sensible(humidity.getMin()),
        Digits.sensible(humidity.getMax()),
        String.format(Locale.ROOT, "%.1f", climate.meanKineticC()));
  }
}
