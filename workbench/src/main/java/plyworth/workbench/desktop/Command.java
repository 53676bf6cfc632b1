package plyworth.workbench.desktop;

import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;

/** Something the user can do, for menus, the tool bar and the keyboard alike. */
final class Command extends AbstractAction {

  private static final long serialVersionUID = 1L;

  private final transient Runnable work;

  private Command(String name, Runnable work) {
    super(name);
    this.work = work;
  }

  /** A command named by a key of {@link Words}, without a shortcut. */
  static Command of(String key, Runnable work) {
    return new Command(Words.of(key), work);
  }

  /** A command with a shortcut: the menu key of the system and a letter, maybe with shift. */
  static Command of(String key, int letter, boolean shift, Runnable work) {
    Command command = of(key, work);
    int mask =
        Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx()
            | (shift ? KeyEvent.SHIFT_DOWN_MASK : 0);
    command.putValue(Action.ACCELERATOR_KEY, KeyStroke.getKeyStroke(letter, mask));
    return command;
  }

  void rename(String name) {
    putValue(Action.NAME, name);
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    work.run();
  }
}
