package plyworth.workbench.desktop.session;

import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.Timer;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Background;

/** Keeps what is not saved, off the event thread, once nothing has been edited for a while. */
final class Safekeeping {

  private static final int IDLE_MILLIS = 1500;

  private final Recovery recovery;
  private final Consumer<String> failed;
  private final Background work = new Background();
  private final Timer idle = new Timer(IDLE_MILLIS, event -> keep());
  private Path file;
  private StudyHistory history;

  /**
   * Nothing to keep yet.
   *
   * @param failed told why something could not be kept
   */
  Safekeeping(Recovery recovery, Consumer<String> failed) {
    this.recovery = recovery;
    this.failed = failed;
    idle.setRepeats(false);
  }

  /** Keeps a study of a file once it is left alone. */
  void soon(Path path, StudyHistory states) {
    file = path;
    history = states;
    idle.restart();
  }

  /** Keeps nothing more; what was kept stays. */
  void rest() {
    idle.stop();
  }

  /** Gives up what was kept of a file. */
  void forget(Path path) {
    idle.stop();
    work.cancel();
    recovery.forget(path);
  }

  /** Keeps nothing from now on; what is being written is written to its end. */
  void end() {
    idle.stop();
    work.end();
    recovery.settle();
  }

  /** What is saved needs no keeping. */
  private void keep() {
    Path path = file;
    Study study = history.current();
    boolean unsaved = history.dirty();
    work.run(
        stale -> {
          if (unsaved) {
            recovery.keep(path, study, stale);
          } else {
            recovery.forget(path);
          }
          return path;
        },
        kept -> {},
        failed);
  }
}
