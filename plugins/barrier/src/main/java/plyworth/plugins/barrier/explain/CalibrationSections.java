package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plyworth.plugins.barrier.calibration.Evidence;
import plyworth.plugins.barrier.pack.BarrierCriteria;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.Calibration;
import plyworth.plugins.barrier.pack.Comparison;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.scoring.Text;

/** Which figures are calibrated, and by what. */
final class CalibrationSections {

  private static final String NOTHING = "–";

  private CalibrationSections() {}

  static List<Section> of(BarrierModel model) {
    Calibration calibration = model.calibration();
    if (calibration.comparisons().isEmpty()) {
      return List.of(new Note(Text.of("note.uncalibrated"), Text.of("basis.calibration")));
    }
    return List.of(measurements(calibration), figures(model));
  }

  private static Section measurements(Calibration calibration) {
    List<List<Object>> rows = new ArrayList<>();
    for (Comparison comparison : calibration.comparisons()) {
      Measurement measurement = comparison.measurement();
      rows.add(
          List.of(
              measurement.figure(),
              measurement.unit().isEmpty() ? NOTHING : measurement.unit(),
              measurement.value(),
              comparison.predicted(),
              comparison.ratio(),
              comparison.evidence().map(Evidence::times).orElse(Double.NaN),
              measurement.method(),
              measurement.date().isEmpty() ? NOTHING : measurement.date(),
              measurement.note().isEmpty() ? NOTHING : measurement.note()));
    }
    List<Text> columns =
        List.of(
            Text.of("column.settles"),
            Text.of("column.unit"),
            Text.of("column.measured"),
            Text.of("column.predicted"),
            Text.of("column.ratio"),
            Text.of("column.shared"),
            Text.of("column.method"),
            Text.of("column.date"),
            Text.of("column.note"));
    return new Table(
        Text.of("section.calibration", calibration.times(), calibration.correction().spread()),
        columns,
        rows,
        Text.of("basis.calibration"));
  }

  /** Which figures of this brief are calibrated, and by what. */
  private static Section figures(BarrierModel model) {
    Calibration calibration = model.calibration();
    List<List<Object>> rows = new ArrayList<>();
    for (Criterion criterion : BarrierCriteria.all()) {
      boolean applies = !model.notApplicable().containsKey(criterion.id());
      boolean calibrated = applies && calibration.of(criterion.id());
      rows.add(
          List.of(
              BarrierCriteria.PLUGIN + "/" + criterion.id(),
              calibrated ? "word.calibrated" : "word.not-calibrated",
              calibrated ? by(calibration) : NOTHING));
    }
    List<Text> columns =
        List.of(
            Text.of("column.settles"),
            Text.of("column.calibrated"),
            Text.of("column.calibrated-by"));
    return new Table(Text.of("section.calibrated"), columns, rows, Text.of("basis.calibrated"));
  }

  private static String by(Calibration calibration) {
    return calibration.used().map(CalibrationSections::by).collect(Collectors.joining("; "));
  }

  private static String by(Comparison comparison) {
    Measurement measurement = comparison.measurement();
    String dated = measurement.date().isEmpty() ? "" : ", " + measurement.date();
    double times = Math.rint(1000 * comparison.ratio()) / 1000;
    return measurement.figure() + ": " + measurement.method() + dated + ", × " + times;
  }
}
