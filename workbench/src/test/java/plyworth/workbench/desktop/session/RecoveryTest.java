package plyworth.workbench.desktop.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;

/** Copies of what is not saved. */
class RecoveryTest {

  @TempDir Path folder;

  private final Study study = StudyFile.selfContained(SmallStudy.few());

  private Recovery recovery() {
    return new Recovery(folder.resolve("unsaved"));
  }

  @Test
  void whatIsKeptOutlivesTheProgramUntilItIsForgotten() {
    Path file = folder.resolve("mint.study.json");
    recovery().keep(file, study, () -> false);
    assertThat(recovery().of(file)).contains(study);
    assertThat(recovery().of(folder.resolve("other.study.json"))).isEmpty();
    recovery().forget(file);
    assertThat(recovery().of(file)).isEmpty();
  }

  @Test
  void filesOfOneNameInTwoFoldersAreKeptApart() {
    recovery().keep(folder.resolve("a").resolve("mint.study.json"), study, () -> false);
    assertThat(recovery().of(folder.resolve("b").resolve("mint.study.json"))).isEmpty();
  }

  @Test
  void whatNeedNotBeKeptAnyMoreIsNot() {
    Path file = folder.resolve("mint.study.json");
    recovery().keep(file, study, () -> true);
    assertThat(recovery().of(file)).isEmpty();
  }

  @Test
  void aCopyThatCannotBeReadCountsAsNoneAndStaysWhereItIs() throws IOException {
    Path file = folder.resolve("mint.study.json");
    recovery().keep(file, study, () -> false);
    try (Stream<Path> copies = Files.list(folder.resolve("unsaved"))) {
      for (Path copy : copies.toList()) {
        Files.writeString(copy, "torn");
      }
    }
    assertThat(recovery().of(file)).isEmpty();
    assertThat(folder.resolve("unsaved")).isNotEmptyDirectory();
  }
}
