package plyworth.workbench.desktop.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Background;

/** Writes studies to their files, off the event thread, one at a time. */
final class Writing {

  private final Background work = new Background();
  private final List<Runnable> waiting = new ArrayList<>();
  private final Runnable changed;
  private Path path;

  /**
   * Nothing is being written.
   *
   * @param changed told when something begins or ends to be written
   */
  Writing(Runnable changed) {
    this.changed = changed;
  }

  /** What is being written; empty when nothing is. */
  Optional<Path> path() {
    return Optional.ofNullable(path);
  }

  /**
   * Writes a study.
   *
   * @param expected fingerprint of what is to be replaced
   * @param taken told the fingerprint of what was written, before anybody else learns of it
   * @param done told when it is written
   * @param refused told why it cannot be written
   */
  void write(
      Path file,
      Study study,
      Supplier<String> expected,
      Consumer<String> taken,
      Runnable done,
      Consumer<String> refused) {
    path = file;
    work.run(
        stale -> StudyFile.save(file, study, expected.get()),
        print -> {
          taken.accept(print);
          end(done);
        },
        reason -> end(() -> refused.accept(reason)));
    changed.run();
  }

  private void end(Runnable told) {
    path = null;
    changed.run();
    told.run();
    List<Runnable> next = List.copyOf(waiting);
    waiting.clear();
    next.forEach(Runnable::run);
  }

  /** Runs something when nothing is being written: now, or as soon as that is done. */
  void whenDone(Runnable next) {
    if (path == null) {
      next.run();
    } else {
      waiting.add(next);
    }
  }
}
