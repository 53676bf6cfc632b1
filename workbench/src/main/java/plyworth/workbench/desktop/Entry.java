package plyworth.workbench.desktop;

import java.awt.Font;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;

/** A field, and beside it what is wrong with what stands in it. */
final class Entry {

  private static final String OUTLINE = "JComponent.outline";

  private final JComponent field;
  private final JTextArea refusal = StackPanel.words("", Font.PLAIN);

  /**
   * An entry.
   *
   * @param field a named field
   */
  Entry(JComponent field) {
    this.field = field;
    refusal.setName(field.getName() + "-refusal");
    refusal.setVisible(false);
  }

  JComponent field() {
    return field;
  }

  JComponent refusal() {
    return refusal;
  }

  String text() {
    return ((JTextComponent) field).getText().strip();
  }

  /** Says what is wrong, and what would be right. */
  void refuse(String reason) {
    refusal.setForeground(UIManager.getColor("Actions.Red"));
    refusal.setText("▲ " + reason);
    show(reason, "error");
  }

  /** Nothing is wrong any more. */
  void accept() {
    show("", null);
  }

  private void show(String reason, String outline) {
    refusal.setVisible(!reason.isEmpty());
    field.putClientProperty(OUTLINE, outline);
    field.getAccessibleContext().setAccessibleDescription(reason.isEmpty() ? null : reason);
    refusal.revalidate();
  }

  /** Whether something is wrong. */
  boolean refused() {
    return refusal.isVisible();
  }
}
