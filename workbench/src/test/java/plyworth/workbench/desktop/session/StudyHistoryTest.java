package plyworth.workbench.desktop.session;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;

/** Edits, steps of edits, undo, redo and the unsaved mark. */
class StudyHistoryTest {

  private static final String COST = "cost/packed-per-1000";
  private static final String MARGIN = "barrier/margin";

  private final Study opened = SmallStudy.few();
  private final StudyHistory history = new StudyHistory(opened);

  private void step(String criterion, double weight) {
    history.applyStep(
        criterion,
        () -> criterion,
        study -> study.with(study.activeWeighting().with(criterion, weight)));
  }

  private double weight(String criterion) {
    return history.current().activeWeighting().weight(criterion);
  }

  @Test
  void theStepsOfOneMovementAreOneEdit() {
    step(COST, 4);
    step(COST, 5);
    step(COST, 6);
    assertThat(weight(COST)).isEqualTo(6);
    history.undo();
    assertThat(history.current()).isSameAs(opened);
    assertThat(history.undoLabel()).isEmpty();
    history.redo();
    assertThat(weight(COST)).isEqualTo(6);
  }

  @Test
  void aMovementThatEndsWhereItBeganIsNoEdit() {
    step(COST, 5);
    step(COST, opened.activeWeighting().weight(COST));
    assertThat(history.undoLabel()).isEmpty();
    assertThat(history.dirty()).isFalse();
  }

  @Test
  void aMovementBackToTheStartLeavesTheEditBeforeItAlone() {
    step(COST, 5);
    history.settle();
    step(COST, 6);
    step(COST, 5);
    step(COST, 7);
    history.undo();
    assertThat(weight(COST)).isEqualTo(5);
    history.undo();
    assertThat(history.current()).isSameAs(opened);
  }

  @Test
  void twoMovementsOfTheSameSliderAreTwoEdits() {
    step(COST, 4);
    history.settle();
    step(COST, 5);
    history.undo();
    assertThat(weight(COST)).isEqualTo(4);
  }

  @Test
  void movementsOfTwoSlidersAreTwoEdits() {
    step(COST, 4);
    step(MARGIN, 7);
    history.undo();
    assertThat(weight(MARGIN)).isEqualTo(opened.activeWeighting().weight(MARGIN));
    assertThat(weight(COST)).isEqualTo(4);
  }

  @Test
  void aStepThatChangesNothingIsNone() {
    step(COST, 4);
    history.settle();
    step(COST, 4);
    step(COST, 4);
    history.undo();
    assertThat(history.current()).isSameAs(opened);
    assertThat(history.redoLabel()).contains(COST);
  }

  @Test
  void aMovementAfterUndoBeginsANewEditAndForgetsWhatWasUndone() {
    step(COST, 4);
    step(COST, 5);
    history.undo();
    step(COST, 6);
    step(COST, 7);
    assertThat(history.redoLabel()).isEmpty();
    history.undo();
    assertThat(history.current()).isSameAs(opened);
    history.redo();
    assertThat(weight(COST)).isEqualTo(7);
  }

  @Test
  void aStepBetweenUndoAndRedoDoesNotJoinTheEditBefore() {
    step(COST, 4);
    history.settle();
    step(COST, 5);
    history.undo();
    step(COST, 9);
    history.undo();
    assertThat(weight(COST)).isEqualTo(4);
  }

  @Test
  void savingInTheMidstOfAMovementKeepsTheSavedStateReachable() {
    step(COST, 4);
    history.markSaved(history.current());
    step(COST, 5);
    assertThat(history.dirty()).isTrue();
    history.undo();
    assertThat(weight(COST)).isEqualTo(4);
    assertThat(history.dirty()).isFalse();
  }

  @Test
  void undoBehindTheSavedStateIsUnsaved() {
    step(COST, 4);
    history.markSaved(history.current());
    history.undo();
    assertThat(history.dirty()).isTrue();
  }

  @Test
  void whatIsUndoneAndRedoneIsNamed() {
    history.apply(() -> "change of weighting", study -> study.with(study.weightings().get(1)));
    assertThat(history.undoLabel()).contains("change of weighting");
    history.undo();
    assertThat(history.redoLabel()).contains("change of weighting");
  }

  @Test
  void undoAndRedoStopAtTheEnds() {
    history.undo();
    history.redo();
    assertThat(history.current()).isSameAs(opened);
  }

  @Test
  void whatIsEditedWhileItIsBeingWrittenIsStillUnsaved() {
    step(COST, 5);
    Study written = history.current();
    history.settle();
    step(COST, 6);
    history.markSaved(written);
    assertThat(history.dirty()).isTrue();
    history.undo();
    assertThat(history.dirty()).isFalse();
  }
}
