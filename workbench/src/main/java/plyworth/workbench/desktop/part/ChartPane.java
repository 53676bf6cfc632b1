package plyworth.workbench.desktop.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.ListSelectionModel;
import plyworth.workbench.chart.ChartTable;

/**
 * A chart with what every chart can do: turn into a table, be copied as a picture or as a table,
 * and be saved as a picture. A line above says what is shown.
 */
public final class ChartPane {

  private static final int WIDEST = 420;

  private final JPanel panel = new JPanel(new BorderLayout());
  private final CardLayout cards = new CardLayout();
  private final JPanel body = new JPanel(cards);
  private final JTextArea note = StackPanel.words(" ", Font.PLAIN);
  private final JToggleButton asTable;
  private final JTable table = new JTable();

  private ChartTable shown = new ChartTable(List.of(), List.of());
  private IntConsumer chosen = row -> {};
  private boolean filling;

  /**
   * A pane around a chart.
   *
   * @param name begins the names of its parts
   * @param chart the drawing
   * @param export copies and saves it
   */
  public ChartPane(String name, JComponent chart, ChartExport export) {

    ButtonCommands.place(panel, chart.getAccessibleContext().getAccessibleName());
    Command toggle = Command.of("charts.as-table", null, this::turn);
    asTable = toggle.named(new JToggleButton(toggle), name + ":");
    Keys.leaveByTab(table);
    table.setName(name + "-table");
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    table.setFillsViewportHeight(true);
    table.setDefaultRenderer(Object.class, new ChartCells());
    table
        .getAccessibleContext()
        .setAccessibleName(chart.getAccessibleContext().getAccessibleName());
    table
        .getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!filling && !event.getValueIsAdjusting() && table.getSelectedRow() >= 0) {
                chosen.accept(table.getSelectedRow());
              }
            });
    JComponent tools = ChartTools.of(name, export, () -> shown, asTable);
    note.setName(name + "-note");
    StackPanel head = new StackPanel();
    head.setBorder(BorderFactory.createEmptyBorder(6, 10, 6, 10));
    head.add(note);
    head.add(tools);
    body.add(chart, "chart");
    JScrollPane scroll = new JScrollPane(table);
    scroll.setPreferredSize(new Dimension(0, 0));
    body.add(scroll, "table");
    panel.add(head, BorderLayout.NORTH);
    panel.add(body, BorderLayout.CENTER);
  }

  /** What is put into a view. */
  public JComponent component() {
    return panel;
  }

  /** Told which row of the table was chosen. */
  public void whenChosen(IntConsumer listener) {
    chosen = listener;
  }

  /** Shows other figures. */
  public void show(ChartTable figures, String said) {
    filling = true;
    shown = figures;
    table.setModel(new ChartRows(figures));
    Columns.fit(table, UIScale.scale(WIDEST));
    say(said);
    filling = false;
  }

  /** Says something else of the same figures. */
  public void say(String said) {
    note.setText(said);
    note.setVisible(!said.isEmpty());
    panel.revalidate();
  }

  /** Marks a row of the table; none where it is negative. */
  public void mark(int row) {
    filling = true;
    if (row < 0 || row >= table.getRowCount()) {
      table.clearSelection();
    } else {
      table.setRowSelectionInterval(row, row);
      table.scrollRectToVisible(table.getCellRect(row, 0, true));
    }
    filling = false;
  }

  private void turn() {
    cards.show(body, asTable.isSelected() ? "table" : "chart");
    if (asTable.isSelected()) {
      table.requestFocusInWindow();
    }
  }
}
