package plyworth.workbench.desktop.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Fields one below the other, each with its label before it and a refusal below it. */
public final class EntryForm {

  private static final int LABELS = 140;
  private static final int GAP = 8;

  private final StackPanel panel = new StackPanel();

  /** A form without entries. */
  public EntryForm() {
    panel.setBorder(BorderFactory.createEmptyBorder(8, 12, 8, 16));
  }

  /** The form, to be put into a scroll pane. */
  public JComponent component() {
    return panel;
  }

  /**
   * Adds a field.
   *
   * @param key of the label
   * @param beside what stands behind it; null for nothing
   */
  public Entry add(String key, JComponent field, JComponent beside) {
    JLabel label = Marked.label(key, field);
    label.setPreferredSize(new Dimension(UIScale.scale(LABELS), label.getPreferredSize().height));
    JPanel line = new JPanel(new BorderLayout(GAP, 0));
    line.setBorder(BorderFactory.createEmptyBorder(GAP, 0, 0, 0));
    line.add(label, BorderLayout.WEST);
    line.add(field, BorderLayout.CENTER);
    if (beside != null) {
      line.add(beside, BorderLayout.EAST);
    }
    panel.add(line);
    Entry entry = new Entry(field);
    below(entry.refusal());
    return entry;
  }

  /** Adds something that is read, in the column of the fields. */
  public void below(JComponent part) {
    StackPanel indented = new StackPanel();
    indented.setBorder(BorderFactory.createEmptyBorder(2, LABELS + GAP, 0, 0));
    indented.add(part);
    panel.add(indented);
  }
}
