package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The texts of the window against the code that shows them. */
class WordsTest {

  private static final Path SOURCES = Path.of("src/main/java/plyworth/workbench/desktop");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z.-]*)\"");
  private static final Pattern ASKED =
      Pattern.compile(
          "(?:Words\\.of|Command\\.of|Marked\\.of|Marked\\.label)\\(\\s*\"([a-z.-]+)\"[,)]");

  private final Set<String> keys =
      ResourceBundle.getBundle("plyworth.workbench.desktop.words", Locale.ENGLISH).keySet();

  private static Set<String> found(Pattern pattern) throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.list(SOURCES)) {
      for (Path file : files.toList()) {
        Matcher matcher = pattern.matcher(Files.readString(file));
        while (matcher.find()) {
          found.add(matcher.group(1));
        }
      }
    }
    return found;
  }

  @Test
  void everyTextThatIsAskedForIsThere() throws IOException {
    assertThat(keys).containsAll(found(ASKED));
  }

  @Test
  void everyTextIsShownSomewhere() throws IOException {
    Set<String> literals = found(LITERAL);
    assertThat(keys)
        .allSatisfy(key -> assertThat(literals).as(key).anyMatch(text -> shows(text, key)));
  }

  /** A literal shows a key, or the keys that begin with it, or the title that goes with it. */
  private static boolean shows(String literal, String key) {
    return literal.equals(key)
        || literal.endsWith(".") && key.startsWith(literal)
        || key.equals(literal + ".title");
  }
}
