package plyworth.workbench.desktop.brief;

import com.formdev.flatlaf.util.UIScale;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.DefaultTableModel;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.word.Words;

/**
 * The climate of twelve months as a table: a row for each month, temperature and humidity as they
 * are typed, with their units. Arrows go from cell to cell, Tab leaves the table; rows copied from
 * a sheet are put in from the selected cell on.
 */
final class MonthsInput implements BriefInput {

  private static final int MONTHS = 12;
  private static final int NUMBER_WIDTH = 60;
  private static final String BETWEEN = ", ";

  private final DefaultTableModel cells = new Cells();
  private final JTable table = new JTable(cells);
  private final JScrollPane scroll = new JScrollPane(table);
  private boolean showing;

  MonthsInput(Runnable changed) {
    table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    table.putClientProperty("terminateEditOnFocusLost", true);
    table.setCellSelectionEnabled(true);
    table.setShowGrid(true);
    table.getTableHeader().setReorderingAllowed(false);
    table.getAccessibleContext().setAccessibleName(Words.of("form.field.months"));
    Keys.bind(table, "ctrl V", this::paste);
    Keys.bind(table, "meta V", this::paste);
    Keys.bind(table, "DELETE", this::clear);
    cells.addTableModelListener(
        event -> {
          if (!showing) {
            changed.run();
          }
        });
    show("");
    table.getColumnModel().getColumn(0).setMaxWidth(UIScale.scale(NUMBER_WIDTH));
    table.setPreferredScrollableViewportSize(table.getPreferredSize());
    scroll.setMinimumSize(scroll.getPreferredSize());
  }

  /** The number of the month, and two figures. */
  private static final class Cells extends DefaultTableModel {

    private static final long serialVersionUID = 1L;

    Cells() {
      super(
          new Object[] {
            Words.of("form.month"),
            Words.of("form.month.column", Words.of("form.field.temperature"), "°C, °F"),
            Words.of("form.month.column", Words.of("form.field.humidity"), "%")
          },
          0);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
      return column > 0;
    }
  }

  @Override
  public JComponent component() {
    return scroll;
  }

  @Override
  public JComponent target() {
    return table;
  }

  /** A line for each month; what is being typed counts. */
  @Override
  public String text() {
    return IntStream.range(0, cells.getRowCount())
        .mapToObj(row -> line(cell(row, 1), cell(row, 2)))
        .collect(Collectors.joining("\n"))
        .stripTrailing();
  }

  /** A cell that holds what parts figures is parted from the other by a tab. */
  private static String line(String temperature, String humidity) {
    if (temperature.isEmpty() && humidity.isEmpty()) {
      return "";
    }
    boolean plain = !temperature.isEmpty() && !(temperature + humidity).matches(".*[,;，；].*");
    return temperature + (plain ? BETWEEN : "\t") + humidity;
  }

  private String cell(int row, int column) {
    boolean typing =
        table.isEditing() && table.getEditingRow() == row && table.getEditingColumn() == column;
    return typing
        ? ((JTextField) table.getEditorComponent()).getText().strip()
        : cells.getValueAt(row, column).toString().strip();
  }

  @Override
  public void show(String text) {
    showing = true;
    if (table.isEditing()) {
      table.getCellEditor().cancelCellEditing();
    }
    cells.setRowCount(0);
    List<String> lines = text.lines().toList();
    for (int i = 0; i < Math.max(MONTHS, lines.size()); i++) {
      List<String> figures = i < lines.size() ? StorageEntries.cells(lines.get(i)) : List.of();
      cells.addRow(new Object[] {i + 1, at(figures, 0), rest(figures)});
    }
    showing = false;
  }

  private static String at(List<String> figures, int index) {
    return index < figures.size() ? figures.get(index) : "";
  }

  /** Nothing that was written is lost, however many figures a line has. */
  private static String rest(List<String> figures) {
    return figures.stream().skip(1).collect(Collectors.joining(BETWEEN));
  }

  private void clear() {
    for (int row : table.getSelectedRows()) {
      for (int column : table.getSelectedColumns()) {
        if (column > 0) {
          cells.setValueAt("", row, column);
        }
      }
    }
  }

  private void paste() {
    try {
      Object copied =
          Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
      put(copied.toString(), Math.max(0, table.getSelectedRow()), table.getSelectedColumn());
    } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
      Toolkit.getDefaultToolkit().beep();
    }
  }

  /** Puts rows of a sheet in, the first at a cell; rows that find no month are added. */
  void put(String copied, int row, int column) {
    int first = Math.max(1, column);
    int at = row;
    for (String line : copied.stripTrailing().split("\r?\n")) {
      if (at == cells.getRowCount()) {
        cells.addRow(new Object[] {at + 1, "", ""});
      }
      String[] figures = line.split("\t", -1);
      for (int i = 0; i < figures.length && first + i < cells.getColumnCount(); i++) {
        cells.setValueAt(figures[i].strip(), at, first + i);
      }
      at++;
    }
  }
}
