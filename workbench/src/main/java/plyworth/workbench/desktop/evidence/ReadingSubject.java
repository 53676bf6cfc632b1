package plyworth.workbench.desktop.evidence;

import java.util.Optional;
import javax.swing.JComponent;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.desktop.part.EntryForm;

/** What a reading is of, as {@link ReadingDialog} asks for it. */
interface ReadingSubject {

  /**
   * Adds the fields that say what is measured.
   *
   * @param changed to be told when something else is
   */
  void addTo(EntryForm form, Runnable changed);

  /** Id of what is measured. */
  String figure();

  /** Unit that the study keeps it in, in plain spelling. */
  String unit();

  /** What the keyboard begins with. */
  JComponent first();

  /**
   * Takes a reading.
   *
   * @return why it is refused; empty when it was taken
   */
  Optional<String> take(Measurement reading);
}
