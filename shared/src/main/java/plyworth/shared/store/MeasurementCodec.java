package plyworth.shared.store;

import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.scoring.Measurement;

/** What was measured, on today's pack or since. Whether the unit is that of the figure is open. */
final class MeasurementCodec {

  private MeasurementCodec() {}

  static Measurement read(Fields fields) {
    return reading(fields, CriterionId.read(fields.value("criterion")));
  }

  /** A reading of a figure that was told apart from it. */
  static Measurement reading(Fields fields, String figure) {
    return new Measurement(
        figure,
        fields.number("value"),
        fields.text("unit"),
        fields.number("spread"),
        fields.whole("samples"),
        fields.text("method"),
        fields.text("date", ""),
        fields.text("note", ""));
  }

  static Json write(Measurement measurement) {
    return write(new Entries().put("criterion", measurement.figure()), measurement);
  }

  /** The reading after the entries that say what it is a reading of. */
  static Json write(Entries entries, Measurement reading) {
    return entries
        .put("value", reading.value())
        .put("unit", reading.unit())
        .put("spread", reading.spread())
        .put("samples", reading.samples())
        .put("method", reading.method())
        .put("date", reading.date())
        .put("note", reading.note())
        .json();
  }
}
