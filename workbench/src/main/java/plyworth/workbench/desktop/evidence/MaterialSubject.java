package plyworth.workbench.desktop.evidence;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import plyworth.shared.data.Choice;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.PropertyBounds;
import plyworth.workbench.analysis.References;
import plyworth.workbench.desktop.part.Entry;
import plyworth.workbench.desktop.part.EntryForm;
import plyworth.workbench.desktop.part.NumberEntry;
import plyworth.workbench.desktop.part.Typed;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** A result of a material: of which property, and where in its table. */
final class MaterialSubject implements ReadingSubject {

  private static final int COLUMNS = 24;

  private final Session session;
  private final int row;
  private final MaterialChoice choice;
  private final JTextField at = new JTextField(COLUMNS);
  private final JLabel along = new JLabel();
  private Entry atEntry;

  /**
   * A result to be.
   *
   * @param row which result it takes the place of; -1 for a new one
   */
  MaterialSubject(Session session, int row) {
    this.session = session;
    this.row = row;
    choice = new MaterialChoice(session.study().orElseThrow(), session.installed());
    at.setName("reading-at");
  }

  /** The reading whose place it takes. */
  Optional<Measurement> before() {
    if (row < 0) {
      return Optional.empty();
    }
    MaterialResult before = session.study().orElseThrow().results().materials().get(row);
    choice.choose(before.material(), before.property());
    if (!Double.isNaN(before.at())) {
      at.setText(NumberEntry.text(before.at()));
    }
    return Optional.of(before.reading());
  }

  @Override
  public void addTo(EntryForm form, Runnable changed) {
    choice.addTo(
        form,
        () -> {
          showAlong();
          changed.run();
        });
    atEntry = form.add("reading.at", at, along);
    Typed.into(at, atEntry::accept);
    showAlong();
  }

  /** A figure that holds always is not asked where. */
  private void showAlong() {
    PropertyDefinition.Along runs = choice.along();
    at.setEnabled(runs != PropertyDefinition.Along.NOTHING);
    along.setText(Words.of("reading.along." + Choice.plain(runs)));
    atEntry.accept();
  }

  @Override
  public String figure() {
    return choice.property();
  }

  @Override
  public String unit() {
    return choice.unit();
  }

  @Override
  public JComponent first() {
    return choice.field();
  }

  @Override
  public Optional<String> take(Measurement reading) {
    OptionalDouble place = at.isEnabled() ? NumberEntry.of(at.getText()) : OptionalDouble.empty();
    boolean wanted = choice.carried().filter(p -> p.points().size() > 1).isPresent();
    boolean written = at.isEnabled() && !atEntry.text().isEmpty();
    if (place.isEmpty() && (wanted || written)) {
      atEntry.refuse(Words.of(wanted ? "reading.at.wanted" : "reading.at.refused"));
      at.requestFocusInWindow();
      return Optional.of(Words.of("reading.at.missing"));
    }
    return take(new MaterialResult(choice.material().id(), place.orElse(Double.NaN), reading));
  }

  /** A result that the study cannot hold is refused. */
  private Optional<String> take(MaterialResult result) {
    Study now = session.study().orElseThrow();
    try {
      result.requireIn(now.materialsBefore());
    } catch (IllegalArgumentException e) {
      return Optional.of(Reason.of(e.getMessage()));
    }
    Optional<String> impossible =
        PropertyBounds.check(with(now, Optional.of(result), row), session.installed()).stream()
            .findFirst()
            .map(MaterialSubject::said);
    if (impossible.isEmpty()) {
      session.change(() -> Words.of("edit.result"), study -> with(study, Optional.of(result), row));
    }
    return impossible;
  }

  private static String said(References.Dangling wrong) {
    return Reason.of(wrong.problem() + ". " + wrong.remedy());
  }

  /** The study with one of its results of materials edited. */
  static Study with(Study study, Optional<MaterialResult> result, int row) {
    Results results = study.results();
    return study.with(
        new Results(EditedList.of(results.materials(), result, row), results.candidates()));
  }
}
