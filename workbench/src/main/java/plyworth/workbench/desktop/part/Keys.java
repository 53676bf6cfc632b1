package plyworth.workbench.desktop.part;

import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JTable;
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

  /** Lets Enter answer a dialog, and Escape leave it. */
  public static void answer(JDialog dialog, JButton enter, Action escape) {
    dialog.getRootPane().setDefaultButton(enter);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            escape,
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
  }

  /** Lets Tab leave a table rather than go from cell to cell, and Enter answer its dialog. */
  public static void leaveByTab(JTable table) {
    leaveByTab((JComponent) table);
    table
        .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke("ENTER"), "none");
  }

  /** Lets Tab leave a text rather than be typed. */
  public static void leaveByTab(JComponent part) {
    part.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    part.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
  }
}
