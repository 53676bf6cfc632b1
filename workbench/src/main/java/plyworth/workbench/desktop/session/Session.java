package plyworth.workbench.desktop.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Decision;
import plyworth.shared.study.Remark;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.References;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.PluginCatalog;

/**
 * The study on screen and what is known of it. Lives on the event thread; every change is told to
 * the listeners.
 */
public final class Session {

  private final PluginCatalog installed;
  private final Selection selection = new Selection(this::changed, this::fail);
  private final List<Runnable> listeners = new ArrayList<>();
  private final Background files = new Background();
  private final Recovery recovery;
  private final Safekeeping keeping;
  private final Writing writing = new Writing(this::changed);
  private final Scoring scoring;
  private final Movement movement = new Movement();
  private Path file;
  private String fingerprint;
  private StudyHistory history;
  private List<References.Dangling> dangling = List.of();
  private boolean eachKind = true;
  private Path reading;
  private Supplier<String> message = () -> "";

  /**
   * A session without a study.
   *
   * @param installed the plugins at hand
   * @param recovery where unsaved work is kept
   */
  public Session(PluginCatalog installed, Recovery recovery) {
    this.installed = installed;
    this.recovery = recovery;
    keeping = new Safekeeping(recovery, this::fail);
    scoring = new Scoring(installed, () -> history.current(), this::show, this::changed);
  }

  /** Tells a listener of every change. */
  public void listen(Runnable listener) {
    listeners.add(listener);
  }

  /** Ends all work, as the window is closed; nobody is told of anything any more. */
  public void close() {
    listeners.clear();
    files.end();
    scoring.end();
    selection.end();
    keeping.end();
  }

  private void changed() {
    listeners.forEach(Runnable::run);
  }

  /**
   * Opens a study file in place of the one on screen.
   *
   * @param refused told what is wrong when it cannot be read; the one on screen then stays
   * @param unsaved told what was kept of it and never saved, where something was
   */
  public void open(Path path, Consumer<String> refused, Consumer<Study> unsaved) {
    reading = path;
    files.run(
        stale -> ReadStudy.of(path, installed, recovery),
        read -> {
          reading = null;
          show(read);
          read.unsaved().ifPresent(unsaved);
        },
        reason -> {
          reading = null;
          changed();
          refused.accept(reason);
        });
    changed();
  }

  /** Shows a study that was read in place of the one on screen. */
  public void show(ReadStudy read) {
    show(read.path(), read.opened().fingerprint(), read.history());
  }

  /**
   * Shows a new study in place of the one on screen.
   *
   * @param path where it would be saved; nothing is there yet
   */
  public void begin(Path path, Study study) {
    show(path, StudyFile.NEW, StudyHistory.unsaved(study));
    keeping.soon(file, history);
  }

  private void show(Path path, String print, StudyHistory states) {
    keeping.rest();
    file = path;
    fingerprint = print;
    history = states;
    dangling = References.check(states.current(), installed, Set.of());
    scoring.forget();
    selection.clear();
    movement.forget();
    message = () -> "";
    scoring.refresh();
  }

  /**
   * Writes the study to its file, off the event thread.
   *
   * @param done told when it is written
   * @param refused told why it cannot be written; nothing is lost then
   */
  void save(Runnable done, Consumer<String> refused) {
    String expected = fingerprint;
    write(file, () -> expected, done, refused);
  }

  /**
   * Writes the study to another file, which it then belongs to.
   *
   * @param done told when it is written
   * @param refused told why it cannot be written; nothing is lost then
   */
  void saveAs(Path path, Runnable done, Consumer<String> refused) {
    String expected = fingerprint;
    boolean same = path.equals(file);
    write(path, () -> same ? expected : StudyFile.fingerprint(path), done, refused);
  }

  private void write(
      Path path, Supplier<String> expected, Runnable done, Consumer<String> refused) {
    StudyHistory written = history;
    Study study = history.current();
    Consumer<String> taken =
        print -> {
          written.markSaved(study);
          if (history == written) {
            forgetUnsaved();
            file = path;
            fingerprint = print;
            message = () -> Words.of("status.saved", path.getFileName());
          }
        };
    writing.write(path, study, expected, taken, done, refused);
  }

  /** Runs something when nothing is being written: now, or as soon as that is done. */
  void whenWritten(Runnable work) {
    writing.whenDone(work);
  }

  /** Whether the study is being written. */
  public boolean writing() {
    return writing.path().isPresent();
  }

  /** Whether the study on screen was never saved. */
  boolean neverSaved() {
    return StudyFile.NEW.equals(fingerprint);
  }

  /** Takes over another brief, with what is asked and its terms. */
  public void brief(Study changed) {
    edit(history -> history.apply(() -> Words.of("edit.brief"), study -> changed));
  }

  /** Takes up what was kept and never saved, as an edit that can be undone. */
  void recover(Study kept) {
    edit(history -> history.apply(() -> Words.of("edit.recovered"), study -> kept));
  }

  /** Gives up what is not saved. */
  void forgetUnsaved() {
    if (file != null) {
      keeping.forget(file);
    }
  }

  /** Gives up what was kept of a study that is not on screen. */
  void forgetUnsaved(Path other) {
    recovery.forget(other);
  }

  /** Sets the weight of a criterion, as one step of an edit that {@link #settle} ends. */
  public void weigh(String criterion, Supplier<String> title, double weight) {
    history.applyStep(
        "weight of " + criterion,
        () -> Words.of("edit.weight", title.get()),
        study -> study.with(study.activeWeighting().with(criterion, weight)));
    movement.forget();
    edited();
  }

  /** Ends the edit that is being made in steps. */
  public void settle() {
    history.settle();
  }

  /** Decides on a structure, or on none. */
  public void decide(Decision decision) {
    String label = decision.equals(Decision.OPEN) ? "edit.withdrawal" : "edit.decision";
    edit(history -> history.apply(() -> Words.of(label), study -> study.with(decision)));
  }

  /** Leaves a remark. */
  public void remark(Remark remark) {
    edit(
        history ->
            history.apply(
                () -> Words.of("edit.remark"),
                study ->
                    study.withRemarks(
                        Stream.concat(study.remarks().stream(), Stream.of(remark)).toList())));
  }

  /**
   * Changes the study.
   *
   * @param key of the words that name the edit
   * @param about what the words speak of
   */
  public void change(String key, UnaryOperator<Study> edit, Object... about) {
    edit(history -> history.apply(() -> Words.of(key, about), edit));
  }

  /** Puts another weighting in use. */
  public void use(Weighting weighting) {
    edit(
        history -> history.apply(() -> Words.of("edit.weighting"), study -> study.with(weighting)));
  }

  /**
   * Changes the data that the study reckons with; how the best move is told until the next edit.
   */
  public void reckonWith(Supplier<String> label, UnaryOperator<Study> change) {
    Study before = history.current();
    history.apply(label, change);
    if (history.current() != before) {
      movement.forget();
      scoring.result().ifPresent(last -> movement.begin(label, last.ranked(), last.kinds()));
      edited();
    }
  }

  /**
   * Changes the study.
   *
   * @param label names the edit, in the language of the moment it is asked
   */
  public void change(Supplier<String> label, UnaryOperator<Study> change) {
    edit(history -> history.apply(label, change));
  }

  /** Takes the last edit back. */
  public void undo() {
    edit(StudyHistory::undo);
  }

  /** Makes the edit taken back last again. */
  public void redo() {
    edit(StudyHistory::redo);
  }

  private void edit(Consumer<StudyHistory> edit) {
    edit.accept(history);
    movement.forget();
    edited();
  }

  private void edited() {
    keeping.soon(file, history);
    scoring.refresh();
  }

  /** Stops scoring; what is done is shown as partial. */
  public void stop() {
    scoring.stop();
  }

  /** Scores every candidate again. */
  public void scoreAgain() {
    scoring.scoreAll();
    changed();
  }

  /** Selects a structure and works out everything about it. */
  public void select(Structure structure) {
    if (selection.structure().filter(structure::equals).isEmpty()) {
      ranked().ifPresent(ranked -> selection.select(ranked, structure));
      changed();
    }
  }

  private void show(Pipeline.Result result) {
    Ranked ranked = result.ranked();
    message = () -> StatusText.of(ranked);
    if (ranked.study().equals(history.current())) {
      movement.arrive(ranked, result.kinds());
    }
    Structure first =
        ranked.best().isEmpty()
            ? ranked.baseline().structure()
            : ranked.structure(ranked.best().get(0).path());
    selection.select(ranked, selection.structure().orElse(first));
    changed();
  }

  private void fail(String reason) {
    scoring.fail(reason);
  }

  /** How the last edit of the data moved the best. */
  public Optional<Movement.Told> movement() {
    return movement.told();
  }

  /** Where plugins are looked for. */
  public Path plugins() {
    return installed.folder();
  }

  /** The plugins at hand, whether the study uses them or not. */
  public PluginCatalog installed() {
    return installed;
  }

  /** The file of the study on screen; null without one. */
  public Path file() {
    return file;
  }

  /** The states of the study; empty while none is open. */
  public Optional<StudyHistory> history() {
    return Optional.ofNullable(history);
  }

  /** The study; empty while none is open. */
  public Optional<Study> study() {
    return history().map(StudyHistory::current);
  }

  /** What the study speaks of that is not there. */
  public List<References.Dangling> dangling() {
    return dangling;
  }

  /** The ranking on screen; empty before the first. */
  public Optional<Ranked> ranked() {
    return scoring.result().map(Pipeline.Result::ranked);
  }

  /** What was measured on today's pack, as far as the ranking on screen knows it. */
  public TodayReview today() {
    return scoring.result().map(Pipeline.Result::today).orElse(TodayReview.NONE);
  }

  /** What is shown of the ranking first; there when {@link #ranked} is. */
  public BestList listed() {
    Pipeline.Result result = scoring.result().orElseThrow();
    return eachKind ? result.kinds() : BestList.all(result.ranked(), Pipeline.KINDS);
  }

  /** Whether the best of each kind alone are listed. */
  public boolean eachKind() {
    return eachKind;
  }

  /** Lists the best of each kind alone, or the best however alike. */
  public void list(boolean eachKindAlone) {
    eachKind = eachKindAlone;
    changed();
  }

  /** The selected structure, and what is known of it. */
  public Selection selection() {
    return selection;
  }

  /** What is being worked on; empty when nothing is. */
  public Optional<Pipeline.Stage> stage() {
    if (reading != null) {
      return Optional.of(new Pipeline.Stage(Words.of("status.reading", reading.getFileName()), -1));
    }
    return writing
        .path()
        .map(path -> new Pipeline.Stage(Words.of("status.saving", path.getFileName()), -1))
        .or(scoring::stage);
  }

  /** Whether candidates are being scored. */
  public boolean scoring() {
    return scoring.running();
  }

  /** What the foot of the window says. */
  public String message() {
    return message.get();
  }

  /** Whether scoring did not work or was stopped before it began. */
  public boolean failed() {
    return !failure().isEmpty() && !scoring();
  }

  /** What did not work; empty when all did. */
  public String failure() {
    return scoring.failure();
  }
}
