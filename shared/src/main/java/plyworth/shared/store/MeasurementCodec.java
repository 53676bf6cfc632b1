package plyworth.shared.store;

import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.scoring.Measurement;

/** What was measured on today's pack. Whether the unit is that of the criterion is open. */
final class MeasurementCodec {

  private MeasurementCodec() {}

  static Measurement read(Fields fields) {
    return new Measurement(
        CriterionId.read(fields.value("criterion")),
        fields.number("value"),
        fields.text("unit"),
        fields.number("spread"),
        fields.whole("samples"),
        fields.text("method"),
        fields.text("date", ""),
        fields.text("note", ""));
  }

  static Json write(Measurement measurement) {
    return new Entries()
        .put("criterion", measurement.figure())
        .put("value", measurement.value())
        .put("unit", measurement.unit())
        .put("spread", measurement.spread())
        .put("samples", measurement.samples())
        .put("method", measurement.method())
        .put("date", measurement.date())
        .put("note", measurement.note())
        .json();
  }
}
