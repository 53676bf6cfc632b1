package plyworth.workbench.desktop;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/**
 * Told whenever a text changes, however it does.
 *
 * @param told what is told
 */
record Typed(Runnable told) implements DocumentListener {

  @Override
  public void insertUpdate(DocumentEvent event) {
    told.run();
  }

  @Override
  public void removeUpdate(DocumentEvent event) {
    told.run();
  }

  @Override
  public void changedUpdate(DocumentEvent event) {
    told.run();
  }
}
