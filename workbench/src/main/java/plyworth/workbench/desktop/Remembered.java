package plyworth.workbench.desktop;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import plyworth.shared.data.Choice;

/**
 * What the window remembers from one day to the next, in a file of the user's. What cannot be read
 * counts as never said, and a folder that cannot be written costs the memory alone.
 */
final class Remembered {

  private static final String LANGUAGE = "language";
  private static final String APPEARANCE = "appearance";

  private final Path file;
  private final Properties said = new Properties();

  /** What the file says. */
  Remembered(Path file) {
    this.file = file;
    try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      said.load(in);
    } catch (IOException | IllegalArgumentException e) {
      said.clear();
    }
  }

  /** The language chosen, else that of the system. */
  Language language() {
    return choice(LANGUAGE, Language.values()).orElse(Language.of(Locale.getDefault()));
  }

  void language(Language language) {
    say(LANGUAGE, Choice.plain(language));
  }

  Appearance appearance() {
    return choice(APPEARANCE, Appearance.values()).orElse(Appearance.LIGHT);
  }

  void appearance(Appearance appearance) {
    say(APPEARANCE, Choice.plain(appearance));
  }

  private <E extends Enum<E>> Optional<E> choice(String key, E[] values) {
    return Stream.of(values).filter(v -> Choice.plain(v).equals(said.getProperty(key))).findFirst();
  }

  private void say(String key, String value) {
    if (!value.equals(said.setProperty(key, value))) {
      write();
    }
  }

  private void write() {
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      try (Writer out = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
        said.store(out, null);
      }
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      System.getLogger(Remembered.class.getName())
          .log(System.Logger.Level.WARNING, "cannot remember in " + file + ": " + e);
    }
  }
}
