package plyworth.workbench.desktop.part;

import java.awt.Font;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;

/** A field, and beside it what is wrong with what stands in it. */
public final class Entry {

  private static final String OUTLINE = "JComponent.outline";

  private final JComponent field;
  private final JTextArea refusal = StackPanel.words("", Font.PLAIN);

  /**
   * An entry.
   *
   * @param field a named field
   */
  public Entry(JComponent field) {
    this.field = field;
    refusal.setName(field.getName() + "-refusal");
    refusal.setVisible(false);
  }

  /** Where it is typed. */
  public JComponent field() {
    return field;
  }

  /** Where it is said what is wrong. */
  public JComponent refusal() {
    return refusal;
  }

  /** What is typed, without the space around it. */
  public String text() {
    return ((JTextComponent) field).getText().strip();
  }

  /** Says what is wrong, and what would be right. */
  public void refuse(String reason) {
    refusal.setForeground(UIManager.getColor("Actions.Red"));
    refusal.setText("▲ " + reason);
    show(reason, "error");
  }

  /** Nothing is wrong any more. */
  public void accept() {
    show("", null);
  }

  private void show(String reason, String outline) {
    refusal.setVisible(!reason.isEmpty());
    field.putClientProperty(OUTLINE, outline);
    field.getAccessibleContext().setAccessibleDescription(reason.isEmpty() ? null : reason);
    refusal.revalidate();
  }

  /** Whether something is wrong. */
  public boolean refused() {
    return refusal.isVisible();
  }
}
