package plyworth.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every text in every language, against the code that shows it. */
class BundlesTest {

  private static final String CHINESE = "_zh_CN.properties";
  private static final Pattern ARGUMENT = Pattern.compile("\\{(\\d)[^}]*}");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern WORD = Pattern.compile("([A-Za-z0-9][A-Za-z0-9_-]*)");
  private static final Pattern HAN = Pattern.compile("\\p{IsHan}");

  /** The English bundles of the house. */
  static List<Path> bundles() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(".."))) {
      return files
          .filter(f -> f.toString().contains(Path.of("src", "main", "resources").toString()))
          .filter(f -> f.toString().endsWith(".properties"))
          .filter(f -> !f.toString().contains("_zh_CN"))
          .sorted()
          .toList();
    }
  }

  /** Keys and texts; a key that stands twice is refused. */
  private static TreeMap<String, String> texts(Path file) {
    Set<String> twice = new TreeSet<>();
    Properties read =
        new Properties() {
          private static final long serialVersionUID = 1L;

          @Override
          public synchronized Object put(Object key, Object value) {
            Object before = super.put(key, value);
            if (before != null) {
              twice.add((String) key);
            }
            return before;
          }
        };
    try (Reader in = Files.newBufferedReader(file)) {
      read.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(twice).as("keys that stand twice in " + file).isEmpty();
    TreeMap<String, String> texts = new TreeMap<>();
    read.forEach((key, text) -> texts.put((String) key, (String) text));
    return texts;
  }

  private static Path chinese(Path english) {
    String name = english.getFileName().toString();
    return english.resolveSibling(name.replace(".properties", CHINESE));
  }

  @ParameterizedTest
  @MethodSource("bundles")
  void everyTextIsThereInBothLanguages(Path english) {
    assertThat(chinese(english)).exists();
    assertThat(texts(chinese(english)).keySet()).isEqualTo(texts(english).keySet());
  }

  @ParameterizedTest
  @MethodSource("bundles")
  void bothLanguagesPutInTheSameArguments(Path english) {
    TreeMap<String, String> chinese = texts(chinese(english));
    texts(english)
        .forEach(
            (key, text) ->
                assertThat(arguments(chinese.get(key)))
                    .as(english + " " + key)
                    .isEqualTo(arguments(text)));
  }

  private static Set<String> arguments(String text) {
    return ARGUMENT
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** A text of letters alone that reads the same in both was forgotten, unless it is a symbol. */
  @ParameterizedTest
  @MethodSource("bundles")
  void everySentenceIsTranslated(Path english) {
    TreeMap<String, String> chinese = texts(chinese(english));
    texts(english)
        .forEach(
            (key, text) -> {
              if (text.matches(".*[a-z]{3,} [a-z]{2,} [a-z]{2,}.*")) {
                assertThat(HAN.matcher(chinese.get(key)).find()).as(english + " " + key).isTrue();
              }
            });
  }

  /** Of those whose texts are asked for by key; a reason is found by its wording. */
  static List<Path> keyed() throws IOException {
    return bundles().stream().filter(f -> !f.endsWith("reasons.properties")).toList();
  }

  @ParameterizedTest
  @MethodSource("keyed")
  void everyTextIsShownSomewhere(Path english) throws IOException {
    String code = read(Path.of(english.getParent().toString().replace("resources", "java")));
    Set<String> literals = found(LITERAL, code);
    Path module = Path.of(english.toString().replaceFirst("src.main.resources.*", "src/main"));
    String data = read(module) + read(Path.of("../shared/src/main"));
    Set<String> words =
        found(WORD, data).stream()
            .map(word -> word.toLowerCase(Locale.ROOT).replace('_', '-'))
            .collect(Collectors.toSet());
    Predicate<String> made = key -> literals.stream().anyMatch(part -> makes(part, key, words));
    assertThat(texts(english).keySet())
        .filteredOn(key -> !key.startsWith("term."))
        .filteredOn(key -> !made.test(key))
        .filteredOn(key -> !key.contains(".") || !endsLikeAnother(key, literals, made))
        .isEmpty();
  }

  /** A term is found by the word itself, so the word must stand in its plain text. */
  @ParameterizedTest
  @MethodSource("bundles")
  void everyTermIsAWordOfTheCodeOrOfItsData(Path english) throws IOException {
    Path module = Path.of(english.toString().replaceFirst("src.main.resources.*", "src/main"));
    String data = slug(read(module) + read(Path.of("../shared/src/main")));
    texts(english)
        .forEach(
            (key, text) -> {
              if (key.startsWith("term.")) {
                assertThat(key).isEqualTo("term." + slug(text));
                assertThat(data).as(english.toString()).contains(slug(text));
              }
            });
  }

  private static String slug(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
  }

  /** Made of another key and an ending that the code knows. */
  private static boolean endsLikeAnother(String key, Set<String> literals, Predicate<String> made) {
    int dot = key.lastIndexOf('.');
    return literals.contains(key.substring(dot)) && made.test(key.substring(0, dot));
  }

  /** A literal is a key, or begins one that goes on with words of the code or of its data. */
  private static boolean makes(String literal, String key, Set<String> words) {
    if (literal.equals(key) || key.equals(literal + ".title")) {
      return true;
    }
    boolean begins = literal.matches("[a-z.-]+[.-]") && key.contains(literal);
    return begins
        && Stream.of(key.substring(key.indexOf(literal) + literal.length()).split("\\."))
            .allMatch(word -> words.contains(word) || word.matches("\\d+"));
  }

  private static Set<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(r -> r.group(1)).collect(Collectors.toSet());
  }

  /** All code and data in a folder, texts aside. */
  private static String read(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(f -> f.toString().matches(".*\\.(java|csv|json)"))
          .map(BundlesTest::text)
          .collect(Collectors.joining("\n"));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
