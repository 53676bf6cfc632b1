package plyworth.workbench.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import plyworth.shared.study.Study;

/** The former and later states of a study: an edit is a labelled function, undo moves a pointer. */
final class StudyHistory {

  private record State(Study study, String label) {}

  private final List<State> states = new ArrayList<>();
  private int at;
  private Study saved;

  StudyHistory(Study opened) {
    states.add(new State(opened, ""));
    saved = opened;
  }

  Study current() {
    return states.get(at).study();
  }

  /** Applies an edit; what was undone before is forgotten. An edit that changes nothing is none. */
  void apply(String label, UnaryOperator<Study> edit) {
    Study changed = edit.apply(current());
    if (changed.equals(current())) {
      return;
    }
    states.subList(at + 1, states.size()).clear();
    states.add(new State(changed, label));
    at++;
  }

  /**
   * Applies an edit that belongs to the one before when that has the same label, as the steps of
   * one slider movement do.
   */
  void applyJoined(String label, UnaryOperator<Study> edit) {
    boolean joins = at > 0 && at == states.size() - 1 && states.get(at).label().equals(label);
    Study before = joins ? states.get(at - 1).study() : null;
    apply(label, edit);
    if (joins && at > 1 && states.get(at).label().equals(label)) {
      State last = states.remove(at);
      states.set(--at, last);
      if (last.study().equals(before)) {
        states.remove(at--);
      }
    }
  }

  void undo() {
    at = Math.max(0, at - 1);
  }

  void redo() {
    at = Math.min(states.size() - 1, at + 1);
  }

  /** What undo would take back; empty when there is nothing. */
  Optional<String> undoLabel() {
    return at == 0 ? Optional.empty() : Optional.of(states.get(at).label());
  }

  /** What redo would do again; empty when there is nothing. */
  Optional<String> redoLabel() {
    return at == states.size() - 1 ? Optional.empty() : Optional.of(states.get(at + 1).label());
  }

  void markSaved() {
    saved = current();
  }

  /** Whether there is something that is not saved. */
  boolean dirty() {
    return current() != saved;
  }
}
