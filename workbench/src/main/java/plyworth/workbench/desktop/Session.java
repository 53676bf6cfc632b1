package plyworth.workbench.desktop;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.References;
import plyworth.workbench.host.PluginCatalog;

/**
 * The study on screen and what is known of it. Lives on the event thread; every change is told to
 * the listeners.
 */
final class Session {

  private final PluginCatalog installed;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Background scoring = new Background();
  private final Background details = new Background();
  private Path file;
  private String fingerprint;
  private StudyHistory history;
  private Set<String> leftOut = Set.of();
  private Ranked ranked;
  private Structure selected;
  private Detail detail;
  private Pipeline running;
  private Pipeline.Stage stage;
  private String message = "";
  private boolean failed;

  Session(PluginCatalog installed) {
    this.installed = installed;
  }

  void listen(Runnable listener) {
    listeners.add(listener);
  }

  private void changed() {
    listeners.forEach(Runnable::run);
  }

  /**
   * Opens a study file in place of the one on screen.
   *
   * @throws plyworth.shared.data.DataException when it cannot be read; the one on screen stays
   */
  void open(Path path) throws IOException {
    StudyFile.Opened opened = StudyFile.open(path);
    file = path;
    fingerprint = opened.fingerprint();
    history = new StudyHistory(opened.study());
    Set<String> missing = new LinkedHashSet<>();
    References.check(opened.study(), installed, Set.of())
        .forEach(d -> d.plugin().ifPresent(missing::add));
    leftOut = missing;
    ranked = null;
    selected = null;
    detail = null;
    refresh();
  }

  /** Writes the study to its file. */
  void save() throws IOException {
    saveTo(file, fingerprint);
  }

  /** Writes the study to another file, which it then belongs to. */
  void saveAs(Path path) throws IOException {
    saveTo(path, path.equals(file) ? fingerprint : StudyFile.fingerprint(path));
  }

  private void saveTo(Path path, String expected) throws IOException {
    fingerprint = StudyFile.save(path, history.current(), expected);
    file = path;
    history.markSaved();
    say(Words.of("status.saved", path.getFileName()), false);
  }

  /** Changes the study by a labelled edit. */
  void edit(String label, UnaryOperator<Study> edit) {
    history.apply(label, edit);
    refresh();
  }

  /** Sets the weight of a criterion; one slider movement is one edit. */
  void weigh(String criterion, String title, double weight) {
    history.applyJoined(
        Words.of("edit.weight", title),
        study -> study.with(study.activeWeighting().with(criterion, weight)));
    refresh();
  }

  /** Puts another weighting in use. */
  void use(Weighting weighting) {
    edit(Words.of("edit.weighting"), study -> study.with(weighting));
  }

  void undo() {
    history.undo();
    refresh();
  }

  void redo() {
    history.redo();
    refresh();
  }

  /** Stops scoring; what is done is shown as partial. */
  void stop() {
    if (running != null) {
      running.stop();
    }
  }

  /** Selects a structure and works out everything about it. */
  void select(Structure structure) {
    if (ranked == null || structure.equals(selected) && detail != null) {
      return;
    }
    selected = structure;
    loadDetail();
    changed();
  }

  private void loadDetail() {
    Ranked now = ranked;
    Structure wanted = selected;
    details.run(
        stale -> Detail.of(now, wanted),
        result -> {
          detail = result;
          changed();
        },
        this::fail);
  }

  private void refresh() {
    failed = false;
    Study study = history.current();
    if (ranked != null
        && Pipeline.sameScores(ranked.study(), study)
        && ranked.scored().holds(study)) {
      Ranked before = ranked;
      scoring.run(stale -> before.again(study, Pipeline.LISTED), this::show, this::fail);
    } else {
      Pipeline pipeline = new Pipeline(this::tell);
      running = pipeline;
      PluginCatalog catalog = installed.without(leftOut);
      scoring.run(
          stale -> pipeline.run(study, catalog, stale),
          result -> {
            running = null;
            show(result);
          },
          this::fail);
    }
    changed();
  }

  private void tell(Pipeline.Stage now) {
    if (running != null) {
      stage = now;
      changed();
    }
  }

  private void show(Ranked result) {
    ranked = result;
    stage = null;
    message = StatusText.of(result, leftOut);
    boolean keep = selected != null;
    if (!keep) {
      selected =
          result.best().isEmpty()
              ? result.baseline().structure()
              : result.structure(result.best().get(0).path());
    }
    loadDetail();
    changed();
  }

  private void fail(RuntimeException e) {
    running = null;
    stage = null;
    say(Words.of("status.failed", e.getMessage() == null ? e.toString() : e.getMessage()), true);
  }

  private void say(String text, boolean isFailure) {
    message = text;
    failed = isFailure;
    changed();
  }

  Path file() {
    return file;
  }

  StudyHistory history() {
    return history;
  }

  Study study() {
    return history.current();
  }

  Optional<Ranked> ranked() {
    return Optional.ofNullable(ranked);
  }

  Optional<Structure> selected() {
    return Optional.ofNullable(selected);
  }

  /** What is known of the selected structure; empty while it is worked out. */
  Optional<Detail> detail() {
    return Optional.ofNullable(detail).filter(d -> d.sheet().structure().equals(selected));
  }

  /** What is being worked on; empty when nothing is. */
  Optional<Pipeline.Stage> stage() {
    return Optional.ofNullable(stage);
  }

  boolean scoring() {
    return running != null;
  }

  String message() {
    return message;
  }

  boolean failed() {
    return failed;
  }
}
