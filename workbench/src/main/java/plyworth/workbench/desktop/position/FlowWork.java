package plyworth.workbench.desktop.position;

import java.util.Optional;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.EmptyOffer;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.word.Words;

/**
 * Counts candidates off the event thread whenever the study, its ranking or the selection moves.
 */
final class FlowWork {

  private final Background background = new Background();
  private final Runnable changed;
  private FlowFigures figures;
  private Study asked;
  private Ranked askedRanking;
  private Optional<FlowFigures.Choice> askedChoice = Optional.empty();
  private Optional<FlowFigures.Choice> choice = Optional.empty();
  private String failure = "";

  /**
   * Work that has not begun.
   *
   * @param changed told when more is known
   */
  FlowWork(Runnable changed) {
    this.changed = changed;
  }

  /** What is counted of a study; empty until it is, or where its positions have changed since. */
  Optional<FlowFigures> of(Study study) {
    return Optional.ofNullable(figures).filter(f -> f.offer().isOf(study));
  }

  /** What is selected. */
  Optional<FlowFigures.Choice> choice() {
    return choice;
  }

  /** Selects some options of a position, or nothing. */
  void choose(Optional<FlowFigures.Choice> wanted) {
    choice = wanted;
  }

  /** Counts what is not counted yet. */
  void follow(Study study, Ranked ranking) {
    if (asked != null && !asked.positions().equals(study.positions())) {
      choice = Optional.empty();
    }
    boolean known = figures != null && figures.areOf(study, ranking, choice);
    boolean underWay = study == asked && ranking == askedRanking && choice.equals(askedChoice);
    if (known || underWay) {
      return;
    }
    asked = study;
    askedRanking = ranking;
    askedChoice = choice;
    FlowFigures before = figures;
    Optional<FlowFigures.Choice> wanted = choice;
    background.run(
        stale -> FlowFigures.of(before, study, ranking, wanted, stale), this::done, this::failed);
  }

  private void done(FlowFigures counted) {
    figures = counted;
    failure = "";
    changed.run();
  }

  private void failed(String reason) {
    failure = reason;
    changed.run();
  }

  /** How many candidates there are and how many are ranked, or why there are none. */
  String said(Study study) {
    Optional<FlowFigures> counted = of(study);
    if (counted.isEmpty()) {
      return failure.isEmpty() ? Words.of("status.counting") : failure;
    }
    FlowFigures now = counted.get();
    long candidates = now.offer().flows().candidates();
    if (candidates == 0) {
      return nothing(now);
    }
    return now.ranked()
        .map(ranked -> Words.of("positions.counted", candidates, ranked.candidates()))
        .orElseGet(() -> Words.of("positions.unranked", candidates));
  }

  private static String nothing(FlowFigures now) {
    return now.offer().obstacles().stream()
        .findFirst()
        .map(FlowWork::said)
        .orElseGet(() -> Words.of("positions.no-candidate"));
  }

  private static String said(EmptyOffer.Obstacle obstacle) {
    return Words.of(
        "positions.obstacle",
        obstacle.rule().id(),
        obstacle.rule().reason(),
        obstacle.candidates());
  }
}
