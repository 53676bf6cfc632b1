package plyworth.workbench.desktop;

import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Fields one below the other, each with its label before it and a refusal below it. */
final class EntryForm {

  private static final int WIDTH = 360;
  private static final int GAP = 8;

  private final JPanel panel = new JPanel(new GridBagLayout());
  private int line;

  EntryForm() {
    panel.setBorder(BorderFactory.createEmptyBorder(12, 12, 8, 12));
  }

  JComponent component() {
    return panel;
  }

  /**
   * Adds a field.
   *
   * @param key of the label
   * @param beside what stands behind it; null for nothing
   */
  Entry add(String key, JComponent field, JComponent beside) {
    Entry entry = new Entry(field, WIDTH);
    JLabel label = Marked.label(key, field);
    panel.add(label, place(0, 1, 0, new Insets(GAP, 0, 0, GAP)));
    panel.add(field, place(1, beside == null ? 2 : 1, 1, new Insets(GAP, 0, 0, 0)));
    if (beside != null) {
      panel.add(beside, place(2, 1, 0, new Insets(GAP, GAP, 0, 0)));
    }
    line++;
    below(entry.refusal());
    return entry;
  }

  /** Adds something that is read, in the column of the fields. */
  void below(JComponent part) {
    panel.add(part, place(1, 2, 1, new Insets(2, 0, 0, 0)));
    line++;
  }

  private GridBagConstraints place(int column, int columns, double weight, Insets insets) {
    return new GridBagConstraints(
        column,
        line,
        columns,
        1,
        weight,
        0,
        GridBagConstraints.LINE_START,
        GridBagConstraints.HORIZONTAL,
        insets,
        0,
        0);
  }
}
