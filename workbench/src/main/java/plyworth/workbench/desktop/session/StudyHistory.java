package plyworth.workbench.desktop.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import plyworth.shared.study.Study;

/** The former and later states of a study: an edit is a labelled function, undo moves a pointer. */
public final class StudyHistory {

  private record State(Study study, Supplier<String> label) {}

  private final List<State> states = new ArrayList<>();
  private int at;
  private String growing;
  private int base;
  private Study saved;

  StudyHistory(Study opened) {
    this(opened, opened);
  }

  private StudyHistory(Study first, Study saved) {
    states.add(new State(first, () -> ""));
    this.saved = saved;
  }

  /** The history of a study that is in no file yet. */
  static StudyHistory unsaved(Study made) {
    return new StudyHistory(made, null);
  }

  /** The study as it is now. */
  public Study current() {
    return states.get(at).study();
  }

  /**
   * Applies an edit; what was undone before is forgotten. An edit that changes nothing is none.
   *
   * @param label names the edit, in the language of the moment it is asked
   */
  void apply(Supplier<String> label, UnaryOperator<Study> edit) {
    settle();
    Study changed = edit.apply(current());
    if (!changed.equals(current())) {
      push(label, changed);
    }
  }

  /**
   * Applies one step of an edit that is made in many, as a slider movement is. Steps of one edit
   * become one edit, until it is {@linkplain #settle settled}; when they lead back to where they
   * started, there was none.
   *
   * @param what tells the steps of this edit from those of others
   * @param label names the edit, in the language of the moment it is asked
   */
  void applyStep(String what, Supplier<String> label, UnaryOperator<Study> step) {
    Study changed = step.apply(current());
    if (changed.equals(current())) {
      return;
    }
    if (!what.equals(growing)) {
      growing = what;
      base = at;
    }
    at = base;
    push(label, changed);
  }

  private void push(Supplier<String> label, Study changed) {
    states.subList(at + 1, states.size()).clear();
    if (!changed.equals(current())) {
      states.add(new State(changed, label));
      at++;
    }
  }

  /** Ends the edit that is being made in steps; the next step begins a new one. */
  void settle() {
    growing = null;
  }

  void undo() {
    settle();
    at = Math.max(0, at - 1);
  }

  void redo() {
    settle();
    at = Math.min(states.size() - 1, at + 1);
  }

  /** What undo would take back; empty when there is nothing. */
  public Optional<String> undoLabel() {
    return at == 0 ? Optional.empty() : Optional.of(states.get(at).label().get());
  }

  /** What redo would do again; empty when there is nothing. */
  public Optional<String> redoLabel() {
    return at == states.size() - 1
        ? Optional.empty()
        : Optional.of(states.get(at + 1).label().get());
  }

  /** Notes which state is on disk. */
  void markSaved(Study written) {
    settle();
    saved = written;
  }

  /** Whether there is something that is not saved. */
  public boolean dirty() {
    return !current().equals(saved);
  }
}
