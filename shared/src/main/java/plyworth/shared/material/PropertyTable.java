package plyworth.shared.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Spelling;
import plyworth.shared.quantity.Range;

/** Reads sourced figures, one to a line, for materials and for processes. */
public final class PropertyTable {

  private PropertyTable() {}

  /**
   * Reads a table with the columns {@code subjectColumn, figureColumn, at, low, typical, high,
   * unit, kind, source}.
   *
   * @return properties by id, by subject
   * @throws DataException with the line, for anything malformed or two units for one property
   */
  public static Map<String, Map<String, Property>> read(
      String text, String source, String subjectColumn, String figureColumn) {
    List<String> header = header(subjectColumn, figureColumn);
    Map<String, Map<String, Property>> subjects = new LinkedHashMap<>();
    for (Csv.Row row : Csv.read(text, source, header)) {
      subjects
          .computeIfAbsent(row.text(subjectColumn), s -> new LinkedHashMap<>())
          .merge(row.text(figureColumn), one(row, figureColumn), (a, b) -> joined(a, b, row));
    }
    return subjects;
  }

  /** The columns of a table, in their order. */
  public static List<String> header(String subjectColumn, String figureColumn) {
    return List.of(
        subjectColumn, figureColumn, "at", "low", "typical", "high", "unit", "kind", "source");
  }

  /**
   * The property of one line, with the one figure that stands there.
   *
   * @param figureColumn column of the id of the property
   * @throws DataException with the line, for anything malformed
   */
  public static Property one(Csv.Row row, String figureColumn) {
    try {
      Range range = new Range(row.number("low"), row.number("typical"), row.number("high"));
      Sourced point = new Sourced(row.numberOrUnknown("at"), range, kind(row), row.text("source"));
      return new Property(row.text(figureColumn), row.text("unit"), List.of(point));
    } catch (IllegalArgumentException e) {
      throw new DataException(row.place(), e.getMessage(), "");
    }
  }

  private static SourceKind kind(Csv.Row row) {
    for (SourceKind kind : SourceKind.values()) {
      if (kind.name().equalsIgnoreCase(row.text("kind"))) {
        return kind;
      }
    }
    List<String> known = java.util.Arrays.stream(SourceKind.values()).map(Enum::name).toList();
    throw new DataException(
        row.place(),
        "\"" + row.text("kind") + "\" is not a kind of source",
        Spelling.suggestion(row.text("kind"), known));
  }

  private static Property joined(Property a, Property b, Csv.Row row) {
    if (!a.unit().equals(b.unit())) {
      throw new DataException(
          row.place(), a.id() + " is given in " + a.unit() + " and in " + b.unit(), "Use one.");
    }
    List<Sourced> points = new ArrayList<>(a.points());
    points.addAll(b.points());
    try {
      return new Property(a.id(), a.unit(), points);
    } catch (IllegalArgumentException e) {
      throw new DataException(row.place(), e.getMessage(), "");
    }
  }
}
