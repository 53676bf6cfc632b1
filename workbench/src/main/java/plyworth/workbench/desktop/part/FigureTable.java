package plyworth.workbench.desktop.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import plyworth.workbench.chart.ChartTable;

/** A table as high as its rows, that can be copied and whose rows can be chosen. */
public final class FigureTable {

  private static final int SCROLL_BAR = 14;

  private static final int ROOM = 6;

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JTable table = new JTable();
  private final JScrollPane scroll =
      new JScrollPane(
          table, JScrollPane.VERTICAL_SCROLLBAR_NEVER, JScrollPane.HORIZONTAL_SCROLLBAR_AS_NEEDED);
  private final int widest;
  private ChartTable shown = new ChartTable(List.of(), List.of());
  private IntConsumer chosen = row -> {};
  private boolean filling;

  /**
   * A table.
   *
   * @param widest no column gets wider; longer texts are shown in full by a tooltip
   */
  public FigureTable(String name, String accessibleName, int widest) {
    this.widest = widest;
    table.setName(name);
    table.getAccessibleContext().setAccessibleName(accessibleName);
    table.putClientProperty("FlatLaf.styleClass", "medium");
    table.setDefaultRenderer(Object.class, new ChartCells());
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    WideTable.letTabLeave(table);
    table
        .getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!filling && !event.getValueIsAdjusting() && table.getSelectedRow() >= 0) {
                chosen.accept(table.getSelectedRow());
              }
            });
    for (var listener : scroll.getMouseWheelListeners()) {
      scroll.removeMouseWheelListener(listener);
    }
    Command copy = Command.of("charts.copy-table", null, () -> ChartExport.copyTable(shown));
    JButton button = copy.named(new JButton(copy), name + ":");
    button.putClientProperty("FlatLaf.styleClass", "small");
    JPanel tools = new JPanel(new FlowLayout(FlowLayout.TRAILING, 0, 4));
    tools.add(button);
    panel.setBorder(BorderFactory.createEmptyBorder(2, 10, 2, 10));
    panel.add(tools, BorderLayout.NORTH);
    panel.add(scroll, BorderLayout.CENTER);
  }

  /** What is put into a view. */
  public JComponent component() {
    return panel;
  }

  /** Told which row was chosen. */
  public void whenChosen(IntConsumer listener) {
    chosen = listener;
  }

  /** Does something when a key is struck on the table. */
  public void whenStruck(String key, Runnable work) {
    Keys.bind(table, key, work);
  }

  /** Marks a row. */
  public void choose(int row) {
    table.setRowSelectionInterval(row, row);
  }

  /** Shows other figures. */
  public void show(ChartTable figures) {
    filling = true;
    shown = figures;
    table.setModel(new ChartRows(figures));
    int width = Columns.fit(table, UIScale.scale(widest));
    int line = table.getFontMetrics(table.getFont()).getHeight();
    table.setRowHeight(line * lines(figures) + ROOM);
    int height =
        table.getTableHeader().getPreferredSize().height
            + table.getRowHeight() * table.getRowCount()
            + SCROLL_BAR;
    scroll.setPreferredSize(new Dimension(width, height));
    panel.revalidate();
    filling = false;
  }

  /** Lines of the cell that has most. */
  private static int lines(ChartTable figures) {
    return figures.rows().stream()
        .flatMap(List::stream)
        .mapToInt(cell -> 1 + (int) cell.chars().filter(c -> c == '\n').count())
        .max()
        .orElse(1);
  }
}
