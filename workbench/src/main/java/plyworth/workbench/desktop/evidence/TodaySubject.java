package plyworth.workbench.desktop.evidence;

import java.util.Optional;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Words;

/** A measurement of today's pack: of which criterion. */
final class TodaySubject extends CriterionSubject {

  private final Session session;
  private final int row;

  /**
   * A measurement to be.
   *
   * @param row which measurement it takes the place of; -1 for a new one
   */
  TodaySubject(Session session, Ranked ranked, int row) {
    super(new CriterionChoice(ranked, Optional.of(ranked.baseline())));
    this.session = session;
    this.row = row;
  }

  /** The measurement whose place it takes. */
  Optional<Measurement> before() {
    return chosen(
        row < 0
            ? Optional.empty()
            : Optional.of(session.study().orElseThrow().measurements().get(row)));
  }

  @Override
  public Optional<String> take(Measurement reading) {
    session.change(
        () -> Words.of("edit.measurement"), study -> with(study, Optional.of(reading), row));
    return Optional.empty();
  }

  /** The study without one of its measurements. */
  static Study without(Study study, int row) {
    return with(study, Optional.empty(), row);
  }

  private static Study with(Study study, Optional<Measurement> reading, int row) {
    return study.withMeasurements(EditedList.of(study.measurements(), reading, row));
  }
}
