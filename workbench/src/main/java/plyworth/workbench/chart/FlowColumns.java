package plyworth.workbench.chart;

import java.util.List;

/**
 * Options as columns of boxes, and candidates as ribbons that run from each option of a position to
 * those of the next.
 *
 * @param columns the positions, outside first
 * @param ribbons where candidates run, none of them empty
 * @param candidates number of candidates that run through every column
 */
public record FlowColumns(List<Column> columns, List<Ribbon> ribbons, long candidates) {

  /** Copies the lists. */
  public FlowColumns {
    columns = List.copyOf(columns);
    ribbons = List.copyOf(ribbons);
  }

  /**
   * A position.
   *
   * @param title its heading
   * @param boxes its options, those shown together as one
   */
  public record Column(String title, List<Box> boxes) {

    /** Copies the list. */
    public Column {
      boxes = List.copyOf(boxes);
    }
  }

  /**
   * An option, or several shown together.
   *
   * @param label what it holds
   * @param count how many candidates run through it, as it is written
   * @param family material family of its first layer, for its fill; empty for nothing
   * @param candidates number of candidates through it
   */
  public record Box(String label, String count, String family, long candidates) {}

  /**
   * Candidates between two boxes of neighbouring columns.
   *
   * @param column index of the outer column
   * @param from index of the box there
   * @param to index of the box in the next column
   * @param candidates number of candidates, at least one
   * @param chosen how many of them run through the selected box; all where none is selected
   */
  public record Ribbon(int column, int from, int to, long candidates, long chosen) {}

  /** Number of boxes in a column. */
  public int boxes(int column) {
    return columns.get(column).boxes().size();
  }

  /** A box. */
  public Box box(int column, int box) {
    return columns.get(column).boxes().get(box);
  }
}
