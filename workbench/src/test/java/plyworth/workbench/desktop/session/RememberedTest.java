package plyworth.workbench.desktop.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.word.Language;

/** What the window remembers. */
class RememberedTest {

  private static final Arrangement ARRANGED = new Arrangement(1, 2, 260, 700, 300);

  @TempDir Path folder;

  private Remembered remembered() {
    return new Remembered(folder);
  }

  @Test
  void whatIsSaidOnceIsKnownTheNextDay() {
    remembered().language(Language.CHINESE);
    remembered().appearance(Appearance.HIGH_CONTRAST);
    remembered().left(new Rectangle(10, 20, 900, 700), false, ARRANGED);
    assertThat(remembered().language()).isEqualTo(Language.CHINESE);
    assertThat(remembered().appearance()).isEqualTo(Appearance.HIGH_CONTRAST);
    assertThat(remembered().bounds()).contains(new Rectangle(10, 20, 900, 700));
    assertThat(remembered().arrangement()).contains(ARRANGED);
  }

  @Test
  void aMaximisedWindowKeepsTheBoundsItHadBefore() {
    remembered().left(new Rectangle(10, 20, 900, 700), false, ARRANGED);
    remembered().left(new Rectangle(0, 0, 1600, 1000), true, ARRANGED);
    assertThat(remembered().maximised()).isTrue();
    assertThat(remembered().bounds()).contains(new Rectangle(10, 20, 900, 700));
  }

  @Test
  void theFileOpenedLastComesFirstAndEightAreKnown() {
    IntStream.range(0, 10).forEach(i -> remembered().opened(folder.resolve("f" + i)));
    remembered().opened(folder.resolve("f5"));
    assertThat(remembered().recent())
        .hasSize(8)
        .startsWith(folder.resolve("f5"), folder.resolve("f9"))
        .doesNotHaveDuplicates();
  }

  @Test
  void whatCannotBeReadCountsAsNeverSaid() throws IOException {
    Files.writeString(
        folder.resolve("window.properties"), "language=\\uXYZ\nbounds=1 2\nappearance=loud");
    assertThat(remembered().bounds()).isEmpty();
    assertThat(remembered().appearance()).isEqualTo(Appearance.LIGHT);
    assertThat(remembered().recent()).isEqualTo(List.of());
  }

  @Test
  void aChineseSystemIsSpokenToInChinese() {
    assertThat(Language.of(Locale.CHINA)).isEqualTo(Language.CHINESE);
    assertThat(Language.of(Locale.GERMANY)).isEqualTo(Language.ENGLISH);
  }

  /** Customs of the systems: XDG Base Directory Specification; the others from memory. */
  @Test
  void theFolderFollowsTheCustomsOfTheSystem() {
    Path home = Path.of("home");
    assertThat(UserFolder.of("Linux", home, Map.of()))
        .isEqualTo(home.resolve(".config").resolve("plyworth"));
    assertThat(UserFolder.of("Linux", home, Map.of("XDG_CONFIG_HOME", "conf")))
        .isEqualTo(Path.of("conf", "plyworth"));
    assertThat(UserFolder.of("Windows 11", home, Map.of("APPDATA", "roaming")))
        .isEqualTo(Path.of("roaming", "Plyworth"));
    assertThat(UserFolder.of("Mac OS X", home, Map.of()))
        .isEqualTo(home.resolve("Library").resolve("Application Support").resolve("Plyworth"));
  }
}
