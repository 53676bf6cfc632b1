package plyworth.shared.scoring;

import java.util.List;

/**
 * The breakdown behind a structure's figures, as data; the workbench draws it.
 *
 * @param sections parts in reading order
 */
public record Explanation(List<Section> sections) {

  /** Copies the list. */
  public Explanation {
    sections = List.copyOf(sections);
  }

  /** One part: a table, bars, a curve or a note, with its formula and source. */
  public sealed interface Section {
    /** Heading. */
    Text title();

    /** How it is computed and after which source; for a note its source. */
    Text basis();
  }

  /**
   * A table.
   *
   * @param title heading
   * @param columns column headings, units included
   * @param rows cells: {@link String} or {@link Double}, NaN for unknown; as many as columns
   * @param basis formula and source
   */
  public record Table(Text title, List<Text> columns, List<List<Object>> rows, Text basis)
      implements Section {
    /**
     * Copies the cells.
     *
     * @throws IllegalArgumentException when a row has another number of cells than there are
     *     columns
     */
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<Object> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException("a row of " + title.key() + " has a wrong length");
        }
      }
    }
  }

  /**
   * Bars that add up or compare.
   *
   * @param title heading
   * @param unit unit of the lengths, in plain spelling
   * @param labels what each bar stands for
   * @param lengths lengths; NaN for unknown
   * @param basis formula and source
   */
  public record Bars(Text title, String unit, List<String> labels, List<Double> lengths, Text basis)
      implements Section {
    /** Copies the lists. */
    public Bars {
      labels = List.copyOf(labels);
      lengths = List.copyOf(lengths);
    }
  }

  /**
   * Curves over one axis.
   *
   * @param title heading
   * @param x name and unit of the horizontal axis
   * @param y name and unit of the vertical axis
   * @param series curves
   * @param basis formula and source
   */
  public record Curves(Text title, Text x, Text y, List<Series> series, Text basis)
      implements Section {
    /** Copies the list. */
    public Curves {
      series = List.copyOf(series);
    }
  }

  /**
   * One curve.
   *
   * @param name legend
   * @param x abscissae, ascending
   * @param y ordinates, as many
   */
  public record Series(Text name, List<Double> x, List<Double> y) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException when they differ in length
     */
    public Series {
      x = List.copyOf(x);
      y = List.copyOf(y);
      if (x.size() != y.size()) {
        throw new IllegalArgumentException("a curve needs as many ordinates as abscissae");
      }
    }
  }

  /**
   * A remark, for example the laboratory test that settles a figure.
   *
   * @param title the remark
   * @param basis its source
   */
  public record Note(Text title, Text basis) implements Section {}
}
