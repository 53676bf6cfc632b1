package plyworth.workbench.desktop.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plyworth.shared.data.Choice;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.material.Sourced;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.workbench.analysis.PropertyReaders;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.PropertyNames;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Scale;
import plyworth.workbench.host.Sentences;

/**
 * The properties of a material, those it has and those that some plugin would read, as rows.
 *
 * @param rows by id
 * @param customary whether figures are shown in US customary units
 */
record MaterialRows(List<Row> rows, boolean customary) {

  /**
   * A property.
   *
   * @param property the figures; empty where nothing is known
   * @param readers the plugins that read it
   */
  record Row(String id, Optional<Property> property, List<PropertyReaders.Reader> readers) {

    /** What it is called. */
    String name() {
      return PropertyNames.of(id);
    }

    /** The unit in which its figures are kept. */
    String unit() {
      return property.map(Property::unit).orElseGet(() -> readers.get(0).definition().unit());
    }

    /** What a table of it runs along, as far as a plugin says. */
    Along along() {
      return readers.stream()
          .map(reader -> reader.definition().along())
          .filter(along -> along != Along.NOTHING)
          .findFirst()
          .orElse(Along.NOTHING);
    }

    /** What it is and under which conditions; empty where no plugin says. */
    String meaning() {
      return readers.stream()
          .map(r -> word(r.plugin().plugin(), r.definition().meaning()))
          .distinct()
          .collect(Collectors.joining("\n"));
    }

    /** Titles of the plugins that read it. */
    String readBy() {
      return readers.stream()
          .map(r -> title(r.plugin().plugin()))
          .collect(Collectors.joining(", "));
    }

    private boolean says(List<String> words) {
      String said = (id + " " + name() + " " + meaning() + " " + readBy()).toLowerCase(Locale.ROOT);
      return words.stream().allMatch(said::contains);
    }
  }

  /** What a plugin is called. */
  static String title(ScoringPlugin plugin) {
    return Sentences.of(plugin, plugin.card().title(), Language.inForce().locale());
  }

  private static String word(ScoringPlugin plugin, String word) {
    return Sentences.word(plugin, word, Language.inForce().locale());
  }

  /**
   * The rows of a material.
   *
   * @param words all of them must occur in the id, the meaning or the readers of a property
   */
  static MaterialRows of(
      Material material, PropertyReaders readers, String words, boolean customary) {
    Map<String, Row> rows = new TreeMap<>();
    readers.byProperty().keySet().forEach(id -> rows.put(id, row(material, readers, id)));
    material.properties().keySet().forEach(id -> rows.put(id, row(material, readers, id)));
    List<String> wanted = List.of(words.strip().toLowerCase(Locale.ROOT).split("\\s+"));
    return new MaterialRows(
        rows.values().stream().filter(row -> row.says(wanted)).toList(), customary);
  }

  private static Row row(Material material, PropertyReaders readers, String id) {
    return new Row(id, material.property(id), readers.of(id));
  }

  ChartTable table() {
    List<List<String>> cells = new ArrayList<>();
    rows.forEach(row -> cells.add(cells(row)));
    return new ChartTable(
        List.of(
            ChartTable.Column.words(Words.of("materials.property")),
            ChartTable.Column.figures(Words.of("materials.low")),
            ChartTable.Column.figures(Words.of("materials.typical")),
            ChartTable.Column.figures(Words.of("materials.high")),
            ChartTable.Column.words(Words.of("materials.unit")),
            ChartTable.Column.words(Words.of("materials.origin")),
            ChartTable.Column.words(Words.of("materials.read-by"))),
        cells);
  }

  private List<String> cells(Row row) {
    Scale scale = Scale.of(row.unit(), customary);
    if (row.property().isEmpty()) {
      String dash = Digits.sensible(Double.NaN);
      String why = Words.of("materials.unknown");
      return List.of(row.name(), dash, dash, dash, scale.symbol(), why, row.readBy());
    }
    Property property = row.property().get();
    Sourced first = property.points().get(0);
    int points = property.points().size();
    String origin = origin(first);
    return List.of(
        row.name(),
        Digits.sensible(scale.shown(first.range().low())),
        Digits.sensible(scale.shown(first.range().typical())),
        Digits.sensible(scale.shown(first.range().high())),
        scale.symbol(),
        points == 1 ? origin : Words.of("materials.first-of", origin, points),
        row.readBy());
  }

  /** Where a figure is known from: the kind of origin, and the origin where it says more. */
  static String said(Sourced figure) {
    String kind = origin(figure);
    return figure.source().toLowerCase(Locale.ROOT).startsWith(kind.toLowerCase(Locale.ROOT))
        ? figure.source()
        : Words.of("materials.from", kind, figure.source());
  }

  /** The kind of origin of a figure. */
  static String origin(Sourced figure) {
    return Words.of("source-kind." + Choice.plain(figure.kind()));
  }
}
