package plyworth.workbench.desktop.session;

import java.awt.Rectangle;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plyworth.shared.data.Choice;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.TextSize;
import plyworth.workbench.desktop.word.Language;

/**
 * What the window remembers from one day to the next, in a folder of the user's. What cannot be
 * read counts as never said, and a folder that cannot be written costs the memory alone.
 */
public final class Remembered {

  private static final String LANGUAGE = "language";
  private static final String APPEARANCE = "appearance";
  private static final String TEXT_SIZE = "text-size";

  private static final String RECENT = "recent.";
  private static final String BOUNDS = "bounds";
  private static final String MAXIMISED = "maximised";
  private static final String ARRANGEMENT = "arrangement";
  private static final int MOST_RECENT = 8;

  private final Path file;
  private final Recovery unsaved;
  private final Properties said = new Properties();

  /** What the folder says. */
  public Remembered(Path folder) {
    file = folder.resolve("window.properties");
    unsaved = new Recovery(folder.resolve("unsaved"));
    try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      said.load(in);
    } catch (IOException | IllegalArgumentException e) {
      said.clear();
    }
  }

  /** What was not saved, which lies beside. */
  public Recovery unsaved() {
    return unsaved;
  }

  /** The language chosen, else that of the system. */
  public Language language() {
    return choice(LANGUAGE, Language.values()).orElse(Language.of(Locale.getDefault()));
  }

  /** Remembers a language. */
  public void language(Language language) {
    say(LANGUAGE, Choice.plain(language));
  }

  /** The appearance chosen, else the light one. */
  public Appearance appearance() {
    return choice(APPEARANCE, Appearance.values()).orElse(Appearance.LIGHT);
  }

  /** Remembers an appearance. */
  public void appearance(Appearance appearance) {
    say(APPEARANCE, Choice.plain(appearance));
  }

  /** The size of text chosen, else the normal one. */
  public TextSize textSize() {
    return choice(TEXT_SIZE, TextSize.values()).orElse(TextSize.NORMAL);
  }

  /** Remembers a size of text. */
  public void textSize(TextSize size) {
    say(TEXT_SIZE, Choice.plain(size));
  }

  /** The files opened last, the last first. */
  public List<Path> recent() {
    return IntStream.range(0, MOST_RECENT)
        .mapToObj(i -> said.getProperty(RECENT + i))
        .filter(Objects::nonNull)
        .map(Path::of)
        .toList();
  }

  /**
   * The study opened last that was never saved and of which something is kept; copies lie here, so
   * no folder far away is asked unless there is one.
   */
  public Optional<Path> neverSaved() {
    return recent().stream().filter(f -> unsaved.holds(f) && !Files.exists(f)).findFirst();
  }

  /** Puts a file before the others. */
  public void opened(Path file) {
    Path absolute = file.toAbsolutePath().normalize();
    List<Path> all = new ArrayList<>(recent());
    all.remove(absolute);
    all.add(0, absolute);
    for (int i = 0; i < Math.min(MOST_RECENT, all.size()); i++) {
      said.setProperty(RECENT + i, all.get(i).toString());
    }
    write();
  }

  /** Where the window was; empty when never said. */
  public Optional<Rectangle> bounds() {
    return numbers(BOUNDS, 4).map(n -> new Rectangle(n[0], n[1], n[2], n[3]));
  }

  /** How the parts of the window were arranged; empty when never said. */
  public Optional<Arrangement> arrangement() {
    return numbers(ARRANGEMENT, 5).map(n -> new Arrangement(n[0], n[1], n[2], n[3], n[4]));
  }

  /** Whether the window filled the screen. */
  public boolean maximised() {
    return Boolean.parseBoolean(said.getProperty(MAXIMISED));
  }

  /** Notes how the window was left; a maximised one keeps the bounds it had before. */
  public void left(Rectangle bounds, boolean maximised, Arrangement a) {
    if (!maximised) {
      said.setProperty(BOUNDS, line(bounds.x, bounds.y, bounds.width, bounds.height));
    }
    said.setProperty(MAXIMISED, Boolean.toString(maximised));
    said.setProperty(
        ARRANGEMENT, line(a.view(), a.candidateTab(), a.side(), a.middle(), a.candidateDivider()));
    write();
  }

  private static String line(int... numbers) {
    return IntStream.of(numbers).mapToObj(Integer::toString).collect(Collectors.joining(" "));
  }

  private Optional<int[]> numbers(String key, int count) {
    try {
      int[] numbers =
          Stream.of(said.getProperty(key, "").split(" ")).mapToInt(Integer::parseInt).toArray();
      return Optional.of(numbers).filter(n -> n.length == count);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
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
