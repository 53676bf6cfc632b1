package plyworth.workbench.desktop.brief;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Decision;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Words;

/**
 * Something a new study can begin with.
 *
 * @param title its name on screen
 * @param study reads it, which may take a while
 */
public record NewStudy(String title, Supplier<Study> study) {

  @Override
  public String toString() {
    return title;
  }

  /** All there is: a standard laminate, the study on screen, and the examples in a folder. */
  static List<NewStudy> all(Session session, Path examples) {
    List<NewStudy> all = new ArrayList<>();
    all.add(new NewStudy(Words.of("new.laminate"), PaperLaminate::study));
    session
        .study()
        .ifPresent(study -> all.add(new NewStudy(Words.of("new.open"), () -> untold(study))));
    for (Path file : files(examples)) {
      String name = file.getFileName().toString().replace(StudyFile.SUFFIX, "");
      all.add(new NewStudy(name, () -> untold(StudyFile.open(file).study())));
    }
    return all;
  }

  /** Where a new study would be saved: named after its title, where no file is yet. */
  public static Path file(Path folder, String title) {
    String words = title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    String name = words.replaceAll("^-|-$", "");
    String base = name.isEmpty() ? "study" : name;
    Path file = folder.resolve(base + StudyFile.SUFFIX);
    for (int i = 2; Files.exists(file); i++) {
      file = folder.resolve(base + "-" + i + StudyFile.SUFFIX);
    }
    return file;
  }

  private static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(StudyFile.SUFFIX)).sorted().toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /** The offer and the brief of a study; not what was asked, measured, said or decided there. */
  private static Study untold(Study other) {
    return other
        .withWords("", "", "")
        .withMeasurements(List.of())
        .with(Results.NONE)
        .withRemarks(List.of())
        .with(Decision.OPEN);
  }

  /** What stands in the form at first: all but the terms, which each study states for itself. */
  static BriefDraft draft(Study study) {
    return BriefDraft.of(study).with(BriefField.DEADLINE, "").with(BriefField.PRICE, "");
  }
}
