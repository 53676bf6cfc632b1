package plyworth.workbench.desktop.part;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Does something whenever the text of a field becomes another. */
public final class Typed implements DocumentListener {

  private final Runnable work;

  private Typed(Runnable work) {
    this.work = work;
  }

  /** Listens to a field. */
  public static void into(JTextComponent field, Runnable work) {
    field.getDocument().addDocumentListener(new Typed(work));
  }

  @Override
  public void insertUpdate(DocumentEvent event) {
    work.run();
  }

  @Override
  public void removeUpdate(DocumentEvent event) {
    work.run();
  }

  @Override
  public void changedUpdate(DocumentEvent event) {
    work.run();
  }
}
