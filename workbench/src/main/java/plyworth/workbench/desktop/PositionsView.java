package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Font;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/** The positions with their options, and how many candidates use each. */
final class PositionsView implements View {

  private final JTable table = new WideTable(null);
  private final JPanel panel = new JPanel(new BorderLayout());
  private List<List<BigInteger>> shown;

  PositionsView() {
    table.setName("positions");
    FileDrop.onto(table);
    table.setFillsViewportHeight(true);
    table.getAccessibleContext().setAccessibleName(Words.of("view.positions.name"));
    JTextArea note = StackPanel.words(Words.of("positions.note"), Font.PLAIN);
    panel.add(StackPanel.note(note), BorderLayout.NORTH);
    panel.add(new JScrollPane(table), BorderLayout.CENTER);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  JComponent target() {
    return table;
  }

  @Override
  public void show(Session session) {
    List<List<BigInteger>> counts = session.optionCounts();
    if (counts != shown && session.ranked().isPresent()) {
      shown = counts;
      fill(counts, session.ranked().get().study().positions());
    }
  }

  private void fill(List<List<BigInteger>> counts, List<Position> positions) {
    DefaultTableModel model =
        new DefaultTableModel(
            new Object[] {
              Words.of("positions.position"),
              Words.of("positions.option"),
              Words.of("positions.count")
            },
            0) {
          private static final long serialVersionUID = 1L;

          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    for (int p = 0; p < positions.size(); p++) {
      List<Option> options = positions.get(p).options();
      for (int o = 0; o < options.size(); o++) {
        model.addRow(
            new Object[] {
              o == 0 ? p + 1 + "  " + positions.get(p).title() : "",
              UnitText.of(options.get(o).toString()),
              String.format(Locale.ROOT, "%,d", counts.get(p).get(o))
            });
      }
    }
    table.setModel(model);
    DefaultTableCellRenderer right = new DefaultTableCellRenderer();
    right.setHorizontalAlignment(SwingConstants.RIGHT);
    table.getColumnModel().getColumn(2).setCellRenderer(right);
    Columns.fit(table);
  }
}
