package plyworth.workbench.desktop.session;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.host.PluginCatalog;

/**
 * Scores and ranks the study on screen, off the event thread, as often as it changes; what need not
 * be scored again is ranked again.
 */
final class Scoring {

  private final PluginCatalog installed;
  private final Supplier<Study> current;
  private final Consumer<Pipeline.Result> shown;
  private final Runnable changed;
  private final Background work = new Background();
  private Pipeline running;
  private Pipeline.Result result;
  private Pipeline.Stage stage;
  private String failure = "";

  /**
   * Nothing is scored yet.
   *
   * @param current the study on screen
   * @param shown told of every result
   * @param changed told of everything else
   */
  Scoring(
      PluginCatalog installed,
      Supplier<Study> current,
      Consumer<Pipeline.Result> shown,
      Runnable changed) {
    this.installed = installed;
    this.current = current;
    this.shown = shown;
    this.changed = changed;
  }

  /** The last result; empty before the first. */
  Optional<Pipeline.Result> result() {
    return Optional.ofNullable(result);
  }

  /** What is being worked on; empty when nothing is. */
  Optional<Pipeline.Stage> stage() {
    return Optional.ofNullable(stage);
  }

  /** Whether candidates are being scored. */
  boolean running() {
    return running != null;
  }

  /** What did not work; empty when all did. */
  String failure() {
    return failure;
  }

  /** Forgets the result, as it is of another study. */
  void forget() {
    result = null;
  }

  /** Works out what the study of now asks for. */
  void refresh() {
    failure = "";
    Study study = current.get();
    if (running != null && Pipeline.sameScores(running.study(), study)) {
      changed.run();
      return;
    }
    if (running == null && holds(study)) {
      rankAgain(study);
    } else {
      scoreAll();
    }
    changed.run();
  }

  private boolean holds(Study study) {
    return result != null
        && Pipeline.sameScores(result.ranked().study(), study)
        && result.ranked().scored().holds(study);
  }

  private void rankAgain(Study study) {
    Ranked before = result.ranked();
    TodayReview today = result.today();
    work.run(
        stale -> Pipeline.Result.of(before.again(study, Pipeline.LISTED), today),
        this::take,
        this::end);
  }

  /** Scores every candidate again. */
  void scoreAll() {
    failure = "";
    Pipeline pipeline = new Pipeline(current.get(), this::tell);
    running = pipeline;
    work.run(
        stale -> pipeline.run(installed, stale),
        scored -> {
          running = null;
          take(scored);
          if (pipeline.study() != current.get()) {
            refresh();
          }
        },
        this::end);
  }

  /** Stops; what is done is shown as partial. */
  void stop() {
    if (running != null) {
      running.stop();
    }
  }

  /** Scores nothing from now on. */
  void end() {
    stop();
    work.end();
  }

  private void tell(Pipeline from, Pipeline.Stage now) {
    if (running == from) {
      stage = now;
      changed.run();
    }
  }

  private void take(Pipeline.Result now) {
    result = now;
    stage = null;
    shown.accept(now);
  }

  private void end(String reason) {
    running = null;
    stage = null;
    fail(reason);
  }

  /** Says that something did not work. */
  void fail(String reason) {
    failure = reason;
    changed.run();
  }
}
