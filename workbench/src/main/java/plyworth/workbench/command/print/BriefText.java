package plyworth.workbench.command.print;

import java.util.DoubleSummaryStatistics;
import java.util.Locale;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Handling;
import plyworth.shared.plant.Plant;
import plyworth.shared.plant.WorkCentre;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;

/** What stands in a brief, what was measured on today's pack, and who makes it, in words. */
public final class BriefText {

  private BriefText() {}

  /** A climate: its name, and what the name leaves out. */
  public static String of(Climate climate) {
    if (climate.constant()) {
      String figures =
          Digits.sensible(climate.temperatureC())
              + (" °C " + Digits.sensible(climate.humidityPercent()) + " % RH");
      boolean said = climate.name().contains(figures);
      return climate.name() + (said ? ", constant" : ", constant " + figures);
    }
    DoubleSummaryStatistics celsius = climate.temperatures();
    DoubleSummaryStatistics humidity = climate.humidities();
    return String.format(
        Locale.ROOT,
        "%s, a round of %d seasons, %s to %s °C, %s to %s %% RH, mean kinetic temperature %.1f °C",
        climate.name(),
        climate.seasons().size(),
        Digits.sensible(celsius.getMin()),
        Digits.sensible(celsius.getMax()),
        Digits.sensible(humidity.getMin()),
        Digits.sensible(humidity.getMax()),
        climate.meanKineticC());
  }

  /** How hard the pack is treated. */
  public static String of(Handling handling) {
    return switch (handling) {
      case FLAT -> "flat sheet";
      case FORMED -> "formed and filled";
      case SHIPPED -> "shipped as usual";
      case ROUGH -> "rough, loose or by post";
    };
  }

  /** A measurement with its spread, samples, method and date. */
  public static String of(Measurement measurement) {
    String unit = UnitText.of(measurement.unit());
    return measurement.figure()
        + (" " + Digits.sensible(measurement.value()))
        + (unit.isEmpty() ? "" : " " + unit)
        + (measurement.spread() > 1 ? " ×/÷ " + Digits.sensible(measurement.spread()) : "")
        + (", " + measurement.samples() + (measurement.samples() == 1 ? " sample" : " samples"))
        + (", " + measurement.method())
        + (measurement.date().isEmpty() ? "" : ", " + measurement.date());
  }

  /** A plant: its name, and how much of it there is. */
  public static String of(Plant plant) {
    long outside = plant.centres().stream().filter(WorkCentre::outside).count();
    return plant.name()
        + (", " + counted(plant.centres().size() - outside, "machine"))
        + (", " + counted(outside, "service"))
        + (", " + counted(plant.webs().size(), "web"));
  }

  private static String counted(long count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
