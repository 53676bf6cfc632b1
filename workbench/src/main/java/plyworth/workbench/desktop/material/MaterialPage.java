package plyworth.workbench.desktop.material;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plyworth.shared.data.Choice;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.MaterialUse;
import plyworth.workbench.analysis.PropertyReaders;
import plyworth.workbench.analysis.StudyMaterials;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Scale;
import plyworth.workbench.host.Sentences;

/** Everything about one property of a material, and where the material is used, in words. */
final class MaterialPage {

  private static final int MOST_USES = 30;

  private final Study study;
  private final Material material;
  private final boolean customary;
  private final StringBuilder html = new StringBuilder("<html>");

  private MaterialPage(Study study, Material material, boolean customary) {
    this.study = study;
    this.material = material;
    this.customary = customary;
  }

  /** The page of a material, with one of its properties in front where one is chosen. */
  static String of(
      Study study, Material material, Optional<MaterialRows.Row> row, boolean customary) {
    MaterialPage page = new MaterialPage(study, material, customary);
    row.ifPresent(page::property);
    page.uses();
    return page.html.append("</html>").toString();
  }

  private void property(MaterialRows.Row row) {
    head(row.name().equals(row.id()) ? row.id() : row.name() + " (" + row.id() + ")");
    if (!row.meaning().isEmpty()) {
      row.meaning().lines().forEach(this::line);
    }
    Scale scale = Scale.of(row.unit(), customary);
    if (row.property().isEmpty()) {
      line(Words.of("materials.page.unknown", row.readBy()));
    }
    row.property()
        .ifPresent(p -> p.points().forEach(point -> line(figure(point, scale, row.along()))));
    library(row).ifPresent(this::line);
    measured(row, scale).ifPresent(this::line);
    row.readers().forEach(reader -> line(reader(reader, scale)));
    if (row.readers().isEmpty()) {
      line(Words.of("materials.page.nobody"));
    }
  }

  private String figure(Sourced point, Scale scale, Along along) {
    return Words.of(
        "materials.page.figure",
        place(point.at(), along, customary),
        figures(point.range(), scale),
        MaterialRows.said(point));
  }

  /** Where a figure of a table holds; empty where it holds always. */
  static String place(double at, Along along, boolean customary) {
    if (Double.isNaN(at)) {
      return "";
    }
    if (along == Along.GAUGE) {
      Scale gauge = Scale.of("um", customary);
      return Words.of("materials.at-gauge", Digits.sensible(gauge.shown(at)), gauge.symbol()) + " ";
    }
    return Words.of(
            along == Along.HUMIDITY ? "materials.at-humidity" : "materials.at", Digits.sensible(at))
        + " ";
  }

  /** Typical, and low to high, with the unit. */
  static String figures(Range range, Scale scale) {
    return range.known()
        ? Words.of(
                "materials.figures",
                Digits.sensible(scale.shown(range.typical())),
                Digits.sensible(scale.shown(range.low())),
                Digits.sensible(scale.shown(range.high())),
                scale.symbol())
            .strip()
        : Digits.sensible(Double.NaN);
  }

  /** What the library says, where the study says something else. */
  private Optional<String> library(MaterialRows.Row row) {
    Optional<Material> standard = MaterialLibrary.standard().find(material.id());
    Optional<Property> there = standard.flatMap(m -> m.property(row.id()));
    if (standard.isEmpty() || there.equals(row.property())) {
      return Optional.empty();
    }
    return Optional.of(
        there
            .map(
                property ->
                    Words.of(
                        "materials.page.library",
                        figures(property.range(), Scale.of(property.unit(), customary)),
                        MaterialRows.said(property.points().get(0))))
            .orElseGet(() -> Words.of("materials.page.library-unknown")));
  }

  /** What the study reckons with, where readings have moved the figure. */
  private Optional<String> measured(MaterialRows.Row row, Scale scale) {
    return study
        .materialsAtHand()
        .require(material.id())
        .property(row.id())
        .filter(after -> row.property().filter(after::equals).isEmpty())
        .map(after -> Words.of("materials.page.measured", figures(after.range(), scale)));
  }

  private static String reader(PropertyReaders.Reader reader, Scale scale) {
    ScoringPlugin plugin = reader.plugin().plugin();
    String criteria =
        plugin.criteria().stream()
            .map(Criterion::title)
            .map(title -> Sentences.of(plugin, title, Language.inForce().locale()))
            .collect(Collectors.joining("; "));
    return Words.of(
        "materials.page.reader",
        MaterialRows.title(plugin),
        Digits.sensible(scale.shown(reader.definition().lowest())),
        Digits.sensible(scale.shown(reader.definition().highest())),
        scale.symbol(),
        criteria);
  }

  private void uses() {
    head(MaterialNames.of(material));
    line(
        Words.of(
            "materials.page.material",
            material.id(),
            MaterialNames.family(material),
            MaterialNames.kinds(material),
            MaterialNames.basis(material)));
    if (!material.note().isEmpty()) {
      line(material.note());
    }
    line(
        Words.of(
            StudyMaterials.own(study, material.id())
                ? "materials.page.own"
                : "materials.page.standard"));
    List<MaterialUse> uses = MaterialUse.of(study, material.id());
    line(Words.of(uses.isEmpty() ? "materials.page.unused" : "materials.page.used"));
    uses.stream().limit(MOST_USES).forEach(use -> line("• " + use(use)));
    if (uses.size() > MOST_USES) {
      line(Words.of("materials.page.more", uses.size() - MOST_USES));
    }
  }

  private static String use(MaterialUse use) {
    return use.where() == MaterialUse.Where.OPTION
        ? Words.of("materials.use.option", use.position(), use.what())
        : Words.of("materials.use." + Choice.plain(use.where()), use.what());
  }

  private void head(String text) {
    html.append("<p style='margin-top:6px'><b>").append(Html.escaped(text)).append("</b></p>");
  }

  private void line(String text) {
    html.append("<p style='margin-top:2px'>").append(Html.escaped(text)).append("</p>");
  }
}
