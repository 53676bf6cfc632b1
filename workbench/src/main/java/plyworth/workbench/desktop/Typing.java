package plyworth.workbench.desktop;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Tells whenever something is typed. */
final class Typing implements DocumentListener {

  private final Runnable typed;

  private Typing(Runnable typed) {
    this.typed = typed;
  }

  /** Does something whenever the text of a field changes. */
  static void into(JTextComponent field, Runnable typed) {
    field.getDocument().addDocumentListener(new Typing(typed));
  }

  @Override
  public void insertUpdate(DocumentEvent event) {
    typed.run();
  }

  @Override
  public void removeUpdate(DocumentEvent event) {
    typed.run();
  }

  @Override
  public void changedUpdate(DocumentEvent event) {
    typed.run();
  }
}
