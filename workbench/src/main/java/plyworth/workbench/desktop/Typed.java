package plyworth.workbench.desktop;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Tells of every change of a text. */
record Typed(Runnable changed) implements DocumentListener {

  @Override
  public void insertUpdate(DocumentEvent event) {
    changed.run();
  }

  @Override
  public void removeUpdate(DocumentEvent event) {
    changed.run();
  }

  @Override
  public void changedUpdate(DocumentEvent event) {}
}
