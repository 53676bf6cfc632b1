package plyworth.workbench.desktop.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.PropertyBounds;
import plyworth.workbench.host.PluginCatalog;

/**
 * A study as its file has it.
 *
 * @param path the file
 * @param opened what stands in it; what was kept of a study that was never saved
 * @param kept what was kept of it and never saved
 */
public record ReadStudy(Path path, StudyFile.Opened opened, Optional<Study> kept) {

  /**
   * Reads a study; off the event thread.
   *
   * @param installed the plugins, whose bounds its figures must keep
   * @param recovery where unsaved work is kept
   * @throws plyworth.shared.data.DataException when it cannot be read, or is wrong
   */
  public static ReadStudy of(Path path, PluginCatalog installed, Recovery recovery) {
    Optional<Study> kept = recovery.of(path);
    if (kept.isPresent() && !Files.exists(path)) {
      return new ReadStudy(path, new StudyFile.Opened(kept.get(), StudyFile.NEW), kept);
    }
    StudyFile.Opened opened = StudyFile.open(path);
    PropertyBounds.require(path, opened.study(), installed);
    return new ReadStudy(path, opened, kept);
  }

  /** What was kept of it, where that is another study. */
  public Optional<Study> unsaved() {
    return kept.filter(other -> !other.equals(opened.study()));
  }

  StudyHistory history() {
    return opened.fingerprint().equals(StudyFile.NEW)
        ? StudyHistory.unsaved(opened.study())
        : new StudyHistory(opened.study());
  }
}
