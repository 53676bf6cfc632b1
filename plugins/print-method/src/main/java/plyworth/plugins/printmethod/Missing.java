package plyworth.plugins.printmethod;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Outcome.DataMissing;
import plyworth.shared.scoring.ScoringContext;

/** Finds which figure is missing behind an unknown criterion of one print job. */
record Missing(PrintJob job, ScoringContext context) {

  /** The figure as an outcome, or the first of some missing data. */
  static Outcome outcome(double figure, List<Supplier<Optional<DataMissing>>> missing) {
    if (!Double.isNaN(figure)) {
      return new Outcome.Scored(figure);
    }
    return missing.stream()
        .map(Supplier::get)
        .flatMap(Optional::stream)
        .findFirst()
        .map(Outcome.class::cast)
        .orElseThrow(() -> new IllegalStateException("an unknown figure misses no data"));
  }

  /** A fraction of a liquid. */
  Optional<DataMissing> makeUp() {
    return processes()
        .filter(by -> Double.isNaN(by.makeUp().solids() + by.makeUp().solvent()))
        .map(by -> by.missing(makeUpFigures(by)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Capture or destruction. */
  Optional<DataMissing> control() {
    return processes()
        .filter(by -> Double.isNaN(by.abatement().overall()))
        .map(by -> by.missing("capture", "destruction"))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** What curing takes. */
  Optional<DataMissing> curing() {
    return processes()
        .filter(by -> Double.isNaN(by.perPass()))
        .map(
            by ->
                by.method().drying() == Method.Means.LAMPS
                    ? by.missing("colours", "speed")
                    : by.missing("heat"))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** A property of a printed web. */
  Optional<DataMissing> ofSurface(String property) {
    return job.surfaces().stream()
        .filter(p -> Double.isNaN(context.property(p.web(), property)))
        .map(p -> new DataMissing(p.web().material(), property))
        .findFirst();
  }

  private Stream<WetProcess> processes() {
    return job.layDowns().stream().map(LayDown::by);
  }

  private static String[] makeUpFigures(WetProcess by) {
    String prefix = by.print() ? "ink-" : "adhesive-";
    return new String[] {prefix + "solids", prefix + "water", prefix + "voc"};
  }
}
