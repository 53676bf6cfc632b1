package plyworth.workbench.desktop.word;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The texts of the window against the code that shows them. */
class WordsTest {

  private static final Path SOURCES = Path.of("src/main/java/plyworth/workbench/desktop");
  private static final Pattern ASKED =
      Pattern.compile(
          "(?:Words\\.of|Command\\.of|Marked\\.of|Marked\\.label)\\(\\s*\"([a-z.-]+)\"[,)]");

  private final Set<String> keys = Language.ENGLISH.words().keySet();

  private static Set<String> found(Pattern pattern) throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
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
}
