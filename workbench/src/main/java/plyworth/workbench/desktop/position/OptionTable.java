package plyworth.workbench.desktop.position;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Columns;
import plyworth.workbench.desktop.part.FileDrop;
import plyworth.workbench.desktop.part.WideTable;
import plyworth.workbench.desktop.word.Words;

/** The positions with their options, and how many candidates use each. */
final class OptionTable {

  /** An option by its position and its place there. */
  record At(int position, int option) {}

  private final JTable table = new WideTable(null);
  private final JScrollPane scroll = new JScrollPane(table);
  private final Runnable selected;
  private List<At> rows = List.of();
  private List<Position> shown = List.of();
  private Optional<FlowFigures> counted = Optional.empty();
  private boolean filling;

  /**
   * A table.
   *
   * @param selected told when another row is selected
   * @param dropped told the row on which a material is dropped
   */
  OptionTable(Runnable selected, IntConsumer dropped) {
    this.selected = selected;
    table.setName("positions");
    FileDrop.onto(table);
    MaterialDrop.onto(table, dropped);
    table.setFillsViewportHeight(true);
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.getAccessibleContext().setAccessibleName(Words.of("view.positions.name"));
    table
        .getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!filling && !event.getValueIsAdjusting()) {
                selected.run();
              }
            });
  }

  JComponent component() {
    return scroll;
  }

  /** What the keyboard works on. */
  JTable target() {
    return table;
  }

  /** The option that is selected. */
  Optional<At> at() {
    int row = table.getSelectedRow();
    return row >= 0 && row < rows.size() ? Optional.of(rows.get(row)) : Optional.empty();
  }

  /** Selects a row, and brings it into sight. */
  void select(int row) {
    mark(row);
    SwingUtilities.invokeLater(
        () -> table.scrollRectToVisible(table.getCellRect(table.getSelectedRow(), 0, true)));
  }

  private void mark(int row) {
    if (row >= 0 && row < table.getRowCount()) {
      table.setRowSelectionInterval(row, row);
    }
  }

  /** Selects an option, or the last one of its position where it has fewer. */
  void select(At wanted) {
    select(row(wanted));
  }

  private int row(At wanted) {
    return IntStream.range(0, rows.size())
        .filter(r -> rows.get(r).position() == wanted.position())
        .filter(r -> rows.get(r).option() <= wanted.option())
        .max()
        .orElse(rows.size() - 1);
  }

  /** Shows the positions of a study, with what is counted so far. */
  void show(Study study, Optional<FlowFigures> figures) {
    if (study.positions().equals(shown) && figures.equals(counted)) {
      return;
    }
    At before = at().orElse(new At(0, 0));
    boolean moved = !study.positions().equals(shown);
    filling = true;
    shown = study.positions();
    counted = figures;
    fill();
    mark(row(before));
    filling = false;
    if (moved) {
      select(before);
    }
    selected.run();
  }

  private void fill() {
    DefaultTableModel model =
        new DefaultTableModel(headings(), 0) {
          private static final long serialVersionUID = 1L;

          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    List<At> filled = new ArrayList<>();
    for (int p = 0; p < shown.size(); p++) {
      List<Option> options = shown.get(p).options();
      for (int o = 0; o < options.size(); o++) {
        filled.add(new At(p, o));
        model.addRow(cells(p, o));
      }
    }
    rows = filled;
    table.setModel(model);
    DefaultTableCellRenderer right = new DefaultTableCellRenderer();
    right.setHorizontalAlignment(SwingConstants.RIGHT);
    table.getColumnModel().getColumn(2).setCellRenderer(right);
    table.getColumnModel().getColumn(3).setCellRenderer(right);
    Columns.fit(table);
  }

  private static Object[] headings() {
    return new Object[] {
      Words.of("positions.position"),
      Words.of("positions.option"),
      Words.of("positions.count"),
      Words.of("positions.ranked")
    };
  }

  private Object[] cells(int p, int o) {
    Option option = shown.get(p).options().get(o);
    return new Object[] {
      o == 0 ? p + 1 + "  " + shown.get(p).title() : "",
      OptionWords.full(option),
      counted.map(f -> OptionWords.count(f.offer().flows().through(p, o))).orElse("…"),
      counted.flatMap(FlowFigures::ranked).map(f -> OptionWords.count(f.through(p, o))).orElse("…")
    };
  }
}
