package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import plyworth.shared.structure.Structure;

/** Rules on asking the same thing again. */
final class RepeatRules {

  private RepeatRules() {}

  /** In another order, and bound anew. */
  static void sameInputGivesSameAnswer(List<Trial> trials, List<Structure> structures) {
    List<Structure> backwards = new ArrayList<>(structures);
    Collections.reverse(backwards);
    for (Trial trial : trials) {
      List<Assessment> first = answers(trial, structures);
      List<Assessment> second = new ArrayList<>(answers(trial, backwards));
      Collections.reverse(second);
      assertThat(second).as("asked again: " + trial.name()).isEqualTo(first);
      assertThat(answers(trial.again(), structures)).as(trial.name()).isEqualTo(first);
      for (Structure structure : structures.subList(0, Math.min(3, structures.size()))) {
        assertThat(trial.explain(structure))
            .as("explained again: " + trial.of(structure))
            .isEqualTo(trial.explain(structure));
      }
    }
  }

  static void severalThreadsAgree(List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      List<Assessment> alone = answers(trial, structures);
      List<CompletableFuture<List<Assessment>>> together = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        together.add(
            CompletableFuture.supplyAsync(() -> answers(trial, structures), RepeatRules::fork));
      }
      for (CompletableFuture<List<Assessment>> other : together) {
        assertThat(other.join()).as("in another thread: " + trial.name()).isEqualTo(alone);
      }
    }
  }

  private static List<Assessment> answers(Trial trial, List<Structure> structures) {
    return structures.stream().map(trial::score).toList();
  }

  private static void fork(Runnable work) {
    new Thread(work, "conformance").start();
  }
}
