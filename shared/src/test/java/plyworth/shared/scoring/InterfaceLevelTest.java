package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What plugins were built against stays as the signature file of its level says. */
class InterfaceLevelTest {

  private static final String FILE = "interface-level-" + InterfaceLevel.CURRENT + ".txt";

  /**
   * A line that is gone or changed breaks plugins, as does a new abstract method: raise {@link
   * InterfaceLevel#CURRENT}, and write a file for the new level.
   */
  @Test
  void nothingThatAPluginMayUseIsGoneAndNothingNewIsAskedOfIt() throws IOException {
    SortedSet<String> gone = signed();
    gone.removeAll(Signatures.now());
    assertThat(gone).as("gone from level " + InterfaceLevel.CURRENT).isEmpty();
    assertThat(added()).as("asked of plugins anew").noneMatch(InterfaceLevelTest::asked);
  }

  /** Whatever else is new is compatible, and belongs into the file of the level. */
  @Test
  void everyAdditionStandsInTheSignatureFile() throws IOException {
    assertThat(added()).as("to be added to " + FILE).isEmpty();
  }

  private static boolean asked(String line) {
    return line.contains(" abstract ") && line.contains("(");
  }

  private static SortedSet<String> added() throws IOException {
    SortedSet<String> added = Signatures.now();
    added.removeAll(signed());
    return added;
  }

  private static SortedSet<String> signed() throws IOException {
    try (InputStream file = InterfaceLevel.class.getResourceAsStream(FILE)) {
      assertThat(file).as(FILE + " beside the interface").isNotNull();
      return new String(file.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
