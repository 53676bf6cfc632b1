package plyworth.workbench.desktop.evidence;

import java.util.Optional;
import javax.swing.JComponent;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.desktop.part.EntryForm;

/** A reading of a criterion, which is chosen. */
abstract class CriterionSubject implements ReadingSubject {

  private final CriterionChoice choice;

  /** A reading of one of the criteria of a choice. */
  CriterionSubject(CriterionChoice choice) {
    this.choice = choice;
  }

  /** A reading whose place is taken, after its criterion has been chosen. */
  final Optional<Measurement> chosen(Optional<Measurement> before) {
    before.ifPresent(measurement -> choice.choose(measurement.figure()));
    return before;
  }

  @Override
  public void addTo(EntryForm form, Runnable changed) {
    choice.addTo(form, changed);
  }

  @Override
  public final String figure() {
    return choice.chosen().id();
  }

  @Override
  public final String unit() {
    return choice.chosen().criterion().unit();
  }

  @Override
  public final JComponent first() {
    return choice.field();
  }
}
