package plyworth.workbench.desktop.evidence;

import java.awt.Font;
import java.util.Optional;
import javax.swing.JTextArea;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.CandidateResult;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.EntryForm;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Detail;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Words;

/** A result of a candidate: of which structure and criterion. */
final class CandidateSubject extends CriterionSubject {

  private final Session session;
  private final int row;
  private final Structure structure;

  /**
   * A result to be.
   *
   * @param structure what was measured
   * @param row which result it takes the place of; -1 for a new one
   */
  CandidateSubject(Session session, Ranked ranked, Structure structure, int row) {
    super(
        new CriterionChoice(
            ranked,
            session
                .selection()
                .detail()
                .map(Detail::sheet)
                .filter(sheet -> sheet.structure().equals(structure))));
    this.session = session;
    this.structure = structure;
    this.row = row;
  }

  /** The reading whose place it takes. */
  Optional<Measurement> before() {
    return chosen(
        row < 0
            ? Optional.empty()
            : Optional.of(session.study().orElseThrow().results().candidates().get(row).reading()));
  }

  @Override
  public void addTo(EntryForm form, Runnable changed) {
    JTextArea said = StackPanel.words(structure.toString(), Font.PLAIN);
    said.setName("reading-structure");
    form.below(said);
    super.addTo(form, changed);
  }

  @Override
  public Optional<String> take(Measurement reading) {
    CandidateResult result = new CandidateResult(structure, reading);
    session.change(() -> Words.of("edit.result"), study -> with(study, Optional.of(result), row));
    return Optional.empty();
  }

  /** The study with one of its results of candidates edited. */
  static Study with(Study study, Optional<CandidateResult> result, int row) {
    Results results = study.results();
    return study.with(
        new Results(results.materials(), EditedList.of(results.candidates(), result, row)));
  }
}
