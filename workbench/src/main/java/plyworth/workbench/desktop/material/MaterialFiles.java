package plyworth.workbench.desktop.material;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.swing.filechooser.FileNameExtensionFilter;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.MaterialImport;
import plyworth.workbench.analysis.MaterialsCsv;
import plyworth.workbench.analysis.StudyMaterials;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.NewFile;
import plyworth.workbench.desktop.session.ReadFile;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.PropertyNames;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Scale;

/** Takes figures of materials out into a file, and takes a file over after a preview. */
final class MaterialFiles {

  private static final String ENDING = ".csv";

  private final Component owner;
  private final ReadFile files;

  /**
   * Files of figures.
   *
   * @param owner what the questions stand over
   */
  MaterialFiles(Component owner) {
    this.owner = owner;
    files = new ReadFile(owner);
  }

  /** Asks for a file and writes the materials that the study uses or carries. */
  void export(Study study) {
    String text = MaterialsCsv.text(StudyMaterials.here(study));
    csv(owner, Words.of("materials.file-name"))
        .write(MaterialFiles::ended, file -> Files.writeString(file, text));
  }

  /** A new file with comma-separated values. */
  static NewFile csv(Component owner, String proposed) {
    FileNameExtensionFilter filter = new FileNameExtensionFilter(Words.of("files.csv"), "csv");
    return new NewFile(owner, "files", filter, proposed + ENDING);
  }

  /** A file with the ending that was left out. */
  static Path ended(Path file) {
    String name = file.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(ENDING)
        ? file
        : file.resolveSibling(name + ENDING);
  }

  /** Asks for a file, shows what it would change, and takes it over as one edit. */
  void read(Session session, boolean customary) {
    Study study = session.study().orElseThrow();
    files.csv(
        session,
        (text, name) -> MaterialImport.read(text, name, study, session.installed()),
        read -> preview(session, study, read, customary));
  }

  private void preview(Session session, Study study, MaterialImport read, boolean customary) {
    String said =
        Words.of(
            "materials.import-said",
            read.added().size(),
            read.changes().size(),
            read.same(),
            read.refused().size());
    new PreviewDialog(
            owner, said, table(read, customary), read.refused(), () -> take(session, study, read))
        .open();
  }

  /** A study that was edited while the file was read keeps its edits. */
  private static void take(Session session, Study before, MaterialImport read) {
    int figures = read.changes().size();
    session.reckonWith(
        () -> Words.of("edit.import", figures),
        study -> study.equals(before) ? read.study() : onto(study, read));
  }

  private static Study onto(Study study, MaterialImport read) {
    Study with = study;
    for (Material material : read.added()) {
      if (with.materialsBefore().find(material.id()).isEmpty()) {
        with = StudyMaterials.with(with, material);
      }
    }
    for (MaterialImport.Change change : read.changes()) {
      with =
          StudyMaterials.with(
              with, with.materialsBefore().require(change.material()).with(change.after()));
    }
    return with;
  }

  private static ChartTable table(MaterialImport read, boolean customary) {
    List<List<String>> rows = new ArrayList<>();
    read.added().forEach(material -> rows.add(row(material)));
    for (MaterialImport.Change change : read.changes()) {
      rows.add(
          List.of(
              MaterialNames.of(read.study().materialsBefore().require(change.material())),
              PropertyNames.of(change.after().id()),
              Words.of(change.before().isEmpty() ? "preview.added" : "preview.changed"),
              change
                  .before()
                  .map(before -> figures(before, customary))
                  .orElse(Digits.sensible(Double.NaN)),
              figures(change.after(), customary),
              change.after().points().get(0).source()));
    }
    return new ChartTable(
        List.of(
            ChartTable.Column.words(Words.of("materials.material")),
            ChartTable.Column.words(Words.of("materials.property")),
            ChartTable.Column.words(Words.of("preview.verdict")),
            ChartTable.Column.words(Words.of("preview.now")),
            ChartTable.Column.words(Words.of("preview.then")),
            ChartTable.Column.words(Words.of("property.source.plain"))),
        rows);
  }

  /** What a material that comes with the file is. */
  private static List<String> row(Material material) {
    return List.of(
        MaterialNames.of(material),
        material.id(),
        Words.of("preview.new"),
        Digits.sensible(Double.NaN),
        String.join(
            "; ",
            MaterialNames.family(material),
            MaterialNames.kinds(material),
            MaterialNames.basis(material)),
        material.note());
  }

  private static String figures(Property property, boolean customary) {
    Scale scale = Scale.of(property.unit(), customary);
    return property.points().stream()
        .map(
            point ->
                (Double.isNaN(point.at()) ? "" : Digits.sensible(point.at()) + ": ")
                    + MaterialPage.figures(point.range(), scale))
        .collect(Collectors.joining("\n"));
  }
}
