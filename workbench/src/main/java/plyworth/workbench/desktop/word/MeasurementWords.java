package plyworth.workbench.desktop.word;

import java.util.List;
import java.util.stream.Collectors;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.host.Digits;

/** How measurements of today's pack are written on screen. */
public final class MeasurementWords {

  private MeasurementWords() {}

  /** All of them, one after the other. */
  public static String of(List<Measurement> measurements) {
    return measurements.isEmpty()
        ? Words.of("brief.none")
        : measurements.stream().map(MeasurementWords::of).collect(Collectors.joining("; "));
  }

  private static String of(Measurement measurement) {
    String figure = Digits.sensible(measurement.value()) + " " + UnitText.of(measurement.unit());
    String spread =
        measurement.spread() > 1
            ? Words.of("brief.measurement.spread", Digits.sensible(measurement.spread()))
            : "";
    String said =
        Words.of(
            "brief.measurement.value",
            measurement.figure(),
            (figure.strip() + " " + spread).strip(),
            measurement.samples(),
            measurement.method());
    String dated = measurement.date().isEmpty() ? said : said + ", " + measurement.date();
    return measurement.note().isEmpty() ? dated : dated + " (" + measurement.note() + ")";
  }
}
