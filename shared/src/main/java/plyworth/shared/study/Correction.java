package plyworth.shared.study;

import java.math.BigDecimal;
import java.util.List;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Measurement;

/**
 * A property after a reading of it. Its points are one uncertain input, so a reading at one gauge
 * or humidity moves all of them by as many of their own deviations, and narrows them in the same
 * proportion. A figure counts as measured once most of its uncertainty is gone.
 */
final class Correction {

  private Correction() {}

  /**
   * The property corrected.
   *
   * @param before the property as it was; null when the material had none
   */
  static Property of(Property before, MaterialResult result) {
    Measurement reading = result.reading();
    LogNormal read = LogNormal.reading(reading.value(), reading.spread());
    if (before == null || !before.at(result.at()).known()) {
      return new Property(
          result.property(),
          reading.unit(),
          List.of(new Sourced(Double.NaN, read.range(), SourceKind.MEASURED, said(reading))));
    }
    LogNormal there = LogNormal.of(before.at(result.at()));
    LogNormal after = there.after(read);
    return new Property(
        before.id(),
        before.unit(),
        before.points().stream().map(point -> moved(point, there, after, reading)).toList());
  }

  private static Sourced moved(
      Sourced point, LogNormal there, LogNormal after, Measurement reading) {
    Range range = point.range();
    if (!range.known()) {
      return point;
    }
    LogNormal own = LogNormal.of(range);
    double steps = there.deviation() == 0 ? 1 : own.deviation() / there.deviation();
    double narrower = there.deviation() == 0 ? 1 : after.deviation() / there.deviation();
    LogNormal moved =
        new LogNormal(
            own.mean() + steps * (after.mean() - there.mean()), own.deviation() * narrower);
    boolean measured = moved.deviation() < own.deviation() / 2;
    return new Sourced(
        point.at(),
        moved.range(),
        measured ? SourceKind.MEASURED : point.kind(),
        point.source() + "; " + said(reading));
  }

  private static String said(Measurement reading) {
    String samples = reading.samples() == 1 ? "1 sample" : reading.samples() + " samples";
    String date = reading.date().isEmpty() ? "" : ", " + reading.date();
    return "corrected by a reading of %s %s within a factor of %s (%s, %s%s)"
        .formatted(
            number(reading.value()),
            reading.unit(),
            number(reading.spread()),
            reading.method(),
            samples,
            date);
  }

  private static String number(double figure) {
    return BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
  }
}
