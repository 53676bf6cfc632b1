package plyworth.workbench.chart;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a chart shows as rows and columns, for whoever reads rather than looks.
 *
 * @param columns headings, with their units
 * @param rows cells as they are written, as many in each row as there are columns
 */
public record ChartTable(List<Column> columns, List<List<String>> rows) {

  /**
   * A column.
   *
   * @param title heading
   * @param figures whether figures stand in it, which line up at the right
   */
  public record Column(String title, boolean figures) {

    /** A column of words. */
    public static Column words(String title) {
      return new Column(title, false);
    }

    /** A column of figures. */
    public static Column figures(String title) {
      return new Column(title, true);
    }
  }

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException when a row has more or fewer cells than there are columns
   */
  public ChartTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row has " + row.size() + " cells under " + columns.size() + " headings: " + row);
      }
    }
  }

  /** Lines of cells with tabs between them, the headings first: what spreadsheets paste. */
  public String tabbed() {
    StringBuilder lines = new StringBuilder(line(columns.stream().map(Column::title).toList()));
    rows.forEach(row -> lines.append(line(row)));
    return lines.toString();
  }

  private static String line(List<String> cells) {
    return cells.stream()
        .map(cell -> cell.replace('\t', ' ').replace('\n', ' '))
        .collect(Collectors.joining("\t", "", "\n"));
  }
}
