package plyworth.workbench.desktop;

import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;

/** Finds texts that are cut. */
final class Cuts {

  private Cuts() {}

  /** What is narrower or lower than its text; what is not shown is left out. */
  static List<String> in(JComponent panel) {
    List<String> cuts = new ArrayList<>();
    for (Component part : Screen.all(panel)) {
      if (!shown(part, panel)) {
        continue;
      }
      Dimension wanted = part.getPreferredSize();
      if (part instanceof JLabel label && !label.getText().isBlank()) {
        note(cuts, wanted.width > part.getWidth() + 1, label.getText());
      } else if (part instanceof AbstractButton button && !button.getText().isBlank()) {
        note(cuts, wanted.width > part.getWidth() + 1, button.getText());
      } else if (part instanceof JComboBox<?> box && box.getSelectedItem() != null) {
        note(cuts, wanted.width > part.getWidth() + 1, box.getSelectedItem().toString());
      } else if (part instanceof JTextArea area) {
        note(cuts, wanted.height > part.getHeight() + 1, area.getText());
      } else if (part instanceof JTable table) {
        cuts.addAll(cells(table));
      }
    }
    return cuts;
  }

  private static boolean shown(Component part, JComponent panel) {
    for (Component c = part; c != panel; c = c.getParent()) {
      if (!c.isVisible()) {
        return false;
      }
    }
    return part.getWidth() > 0 && part.getHeight() > 0;
  }

  private static void note(List<String> cuts, boolean cut, String text) {
    if (cut) {
      cuts.add(text);
    }
  }

  private static List<String> cells(JTable table) {
    List<String> cuts = new ArrayList<>();
    for (int c = 0; c < table.getColumnCount(); c++) {
      int width = table.getColumnModel().getColumn(c).getWidth();
      for (int r = 0; r < table.getRowCount(); r++) {
        Component cell = table.prepareRenderer(table.getCellRenderer(r, c), r, c);
        boolean wraps = cell instanceof JTextArea;
        boolean cut =
            wraps
                ? cell.getPreferredSize().height > table.getRowHeight(r)
                : cell.getPreferredSize().width > width + 1;
        note(cuts, cut, table.getName() + " " + r + ": " + table.getValueAt(r, c));
      }
      Component heading =
          table
              .getTableHeader()
              .getDefaultRenderer()
              .getTableCellRendererComponent(table, table.getColumnName(c), false, false, -1, c);
      note(cuts, heading.getPreferredSize().width > width + 1, table.getColumnName(c));
    }
    return cuts;
  }
}
