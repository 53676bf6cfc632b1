package plyworth.workbench.desktop.session;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import plyworth.shared.data.DataException;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;

/**
 * Copies of what is not saved, one for each study file, where they outlive the program. A copy that
 * cannot be written costs the safety alone, so it is logged and not told.
 */
public final class Recovery {

  private static final int NAME_LENGTH = 24;

  private final Path folder;

  /** Keeps copies in a folder. */
  public Recovery(Path folder) {
    this.folder = folder;
  }

  /**
   * Keeps the unsaved state of a file in place of the one kept before.
   *
   * @param stale whether it need not be kept any more
   */
  public synchronized void keep(Path file, Study study, BooleanSupplier stale) {
    if (stale.getAsBoolean()) {
      return;
    }
    Path copy = copy(file);
    Path fresh = copy.resolveSibling(copy.getFileName() + ".new");
    try {
      Files.createDirectories(folder);
      Files.writeString(fresh, StudyFile.write(study), StandardCharsets.UTF_8);
      Files.move(fresh, copy, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      log("cannot keep unsaved work in " + copy, e);
    }
  }

  /** Whether there is an unsaved state of a file. */
  public boolean holds(Path file) {
    return Files.exists(copy(file));
  }

  /** The unsaved state of a file; empty when there is none, or none that can be read. */
  Optional<Study> of(Path file) {
    Path copy = copy(file);
    if (!Files.exists(copy)) {
      return Optional.empty();
    }
    try {
      return Optional.of(StudyFile.open(copy).study());
    } catch (DataException e) {
      log("cannot read unsaved work in " + copy, e);
      return Optional.empty();
    }
  }

  /** Forgets the unsaved state of a file. */
  synchronized void forget(Path file) {
    try {
      Files.deleteIfExists(copy(file));
    } catch (IOException e) {
      log("cannot remove " + copy(file), e);
    }
  }

  /** Returns once nothing is being written. */
  synchronized void settle() {}

  private Path copy(Path file) {
    byte[] path = file.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8);
    try {
      String name = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(path));
      return folder.resolve(name.substring(0, NAME_LENGTH) + StudyFile.SUFFIX);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static void log(String what, Exception why) {
    System.getLogger(Recovery.class.getName()).log(System.Logger.Level.WARNING, what, why);
  }
}
