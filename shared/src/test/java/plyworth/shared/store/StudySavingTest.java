package plyworth.shared.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.data.DataException;
import plyworth.shared.study.Study;

class StudySavingTest {

  private static final Study STUDY = SampleStudies.sugar();

  @TempDir Path folder;

  private Path file() {
    return folder.resolve("sugar" + StudyFile.SUFFIX);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void savedStudyOpensAgain() throws IOException {
    String fingerprint = StudyFile.save(file(), STUDY, StudyFile.NEW);
    StudyFile.Opened opened = StudyFile.open(file());
    assertThat(opened.study().equals(StudyFile.selfContained(STUDY))).isTrue();
    assertThat(opened.fingerprint()).isEqualTo(fingerprint);
    assertThat(names()).containsExactly("sugar.study.json");
  }

  @Test
  void savingAgainNeedsTheFingerprintOfTheLastSave() {
    String first = StudyFile.save(file(), STUDY, StudyFile.NEW);
    String second = StudyFile.save(file(), SampleStudies.random(1), first);
    assertThat(second).isNotEqualTo(first).isEqualTo(StudyFile.fingerprint(file()));
    assertThatThrownBy(() -> StudyFile.save(file(), STUDY, first))
        .isInstanceOf(DataException.class)
        .hasMessageContaining("changed by somebody else since it was opened")
        .hasMessageContaining("Save under another name");
    assertThat(StudyFile.fingerprint(file())).isEqualTo(second);
  }

  @Test
  void newFileDoesNotReplaceAnother() throws IOException {
    Files.writeString(file(), "precious");
    assertThatThrownBy(() -> StudyFile.save(file(), STUDY, StudyFile.NEW))
        .isInstanceOf(DataException.class)
        .hasMessageContaining("exists already");
    assertThat(file()).hasContent("precious");
  }

  @Test
  void fileThatVanishedIsNoticed() throws IOException {
    String fingerprint = StudyFile.save(file(), STUDY, StudyFile.NEW);
    Files.delete(file());
    assertThatThrownBy(() -> StudyFile.save(file(), STUDY, fingerprint))
        .isInstanceOf(DataException.class);
    assertThat(StudyFile.save(file(), STUDY, StudyFile.NEW)).isEqualTo(fingerprint);
  }

  @Test
  void failedWritingLeavesTheFolderAsItWas() throws IOException {
    Path directory = Files.createDirectory(folder.resolve("occupied.study.json"));
    Files.writeString(directory.resolve("inside"), "precious");
    assertThatThrownBy(() -> SafeWrite.replace(directory, new byte[] {1}))
        .isInstanceOf(IOException.class);
    assertThat(names()).containsExactly("occupied.study.json");
    assertThat(directory.resolve("inside")).hasContent("precious");
  }

  @Test
  void missingFolderIsSaid() {
    Path lost = folder.resolve("nowhere").resolve("sugar.study.json");
    assertThatThrownBy(() -> StudyFile.save(lost, STUDY, StudyFile.NEW))
        .isInstanceOf(DataException.class)
        .hasMessageContaining("sugar.study.json: the file cannot be written")
        .hasMessageContaining("nowhere");
  }

  @Test
  void whatCannotBeOpenedIsSaid() throws IOException {
    assertThatThrownBy(() -> StudyFile.open(file())).hasMessageContaining("does not exist");
    Files.write(file(), new byte[] {'{', (byte) 0xff, '}'});
    assertThatThrownBy(() -> StudyFile.open(file())).hasMessageContaining("is not UTF-8 text");
    Files.write(file(), new byte[10_000_001]);
    assertThatThrownBy(() -> StudyFile.open(file())).hasMessageContaining("larger than 10000000");
    assertThatThrownBy(() -> StudyFile.open(folder)).isInstanceOf(DataException.class);
  }

  @Test
  void savingThroughALinkKeepsTheLink() throws IOException {
    String fingerprint = StudyFile.save(file(), STUDY, StudyFile.NEW);
    Path link = Files.createSymbolicLink(folder.resolve("link.study.json"), file());
    StudyFile.save(link, SampleStudies.random(1), fingerprint);
    assertThat(link).isSymbolicLink();
    assertThat(StudyFile.open(file()).study().title()).isEqualTo("Study 1");
  }
}
