package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SlotsTest {

  private static final int CHUNKS = 3;
  private static final int RUNS = 5;
  private static final int MOST = 4;

  @Test
  void aRunKeepsItsSlotWhileThereAreAnyLeft() {
    Slots slots = new Slots(CHUNKS, RUNS, MOST);
    int first = slots.of(0, 2);
    int second = slots.of(2, 4);
    assertThat(second).isNotEqualTo(first);
    assertThat(slots.of(0, 2)).isEqualTo(first);
    assertThat(slots.of(2, 4)).isEqualTo(second);
  }

  @Test
  void whereNoSlotIsLeftAllAreGivenOutAnewAndNothingInThemCounts() {
    Slots slots = new Slots(CHUNKS, RUNS, MOST);
    for (int run = 0; run < MOST; run++) {
      slots.filled(slots.of(0, run), 1);
    }
    int round = slots.round();
    int slot = slots.of(1, 0);
    assertThat(slot).isBetween(0, MOST - 1);
    assertThat(slots.round()).isNotEqualTo(round);
    assertThat(slots.isFilled(slot, 1)).isFalse();
  }

  @Test
  void whatIsInASlotIsReckonedAnewForAnotherRun() {
    Slots slots = new Slots(CHUNKS, RUNS, 1);
    SlotBounds bounds = new SlotBounds(2, (chunk, run, part) -> chunk + run / 8.0 + part / 16.0);
    for (int run = 0; run < RUNS; run++) {
      int slot = slots.of(2, run);
      bounds.fill(2, run, slot, slots.round());
      assertThat(bounds.all()[bounds.at(slot) + 1]).isEqualTo(2 + run / 8f + 1 / 16f);
    }
  }

  @Test
  void aBoundIsNeverRoundedBelowWhatItBounds() {
    SlotBounds bounds = new SlotBounds(1, (chunk, run, part) -> 0.1 + run / 3.0);
    for (int run = 0; run < RUNS; run++) {
      bounds.fill(0, run, run, 1);
      assertThat((double) bounds.all()[run]).isGreaterThanOrEqualTo(0.1 + run / 3.0);
    }
  }
}
