package plyworth.workbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import plyworth.shared.data.Resources;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.host.PluginCatalog;

/** A small invented study of 132 candidates, and the same with something changed. */
public final class BrothStudy {

  /** Name of its file. */
  public static final String NAME = "broth-stick.study.json";

  private BrothStudy() {}

  /** Its text. */
  public static String text() {
    return Resources.text(BrothStudy.class, NAME);
  }

  /** The text with one part, which must be there, in place of another. */
  public static String with(String right, String other) {
    if (!text().contains(right)) {
      throw new IllegalArgumentException("the study does not hold " + right);
    }
    return text().replace(right, other);
  }

  /** Writes it into a folder. */
  public static Path in(Path folder) {
    return in(folder, text());
  }

  /** Writes a text into a folder, under its name. */
  public static Path in(Path folder, String text) {
    try {
      return Files.writeString(folder.resolve(NAME), text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** It, read. */
  public static Study study() {
    return read(text());
  }

  /** A text, read. */
  public static Study read(String text) {
    return StudyFile.read(text, NAME);
  }

  /** The plugins that were packed with the program. */
  public static PluginCatalog plugins() {
    return PluginCatalog.load(Path.of("target", "plyworth", "plugins"));
  }
}
