package plyworth.workbench.desktop.part;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys that a part of the window answers to while it has the keyboard. */
public final class Keys {

  private Keys() {}

  /** Does something when a key is struck on a part. */
  public static void bind(JComponent part, String key, Runnable work) {
    part.getInputMap().put(KeyStroke.getKeyStroke(key), key);
    part.getActionMap()
        .put(
            key,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                work.run();
              }
            });
  }
}
