package plyworth.workbench.desktop.part;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import plyworth.workbench.desktop.word.Words;

/** Something the user can do, for menus, the tool bar and the keyboard alike. */
public final class Command extends AbstractAction {

  private static final long serialVersionUID = 1L;

  private final String key;
  private final transient Runnable work;

  private Command(String key, Runnable work) {
    this.key = key;
    this.work = work;
  }

  /** A command named by a key of {@link Words}, with an optional shortcut. */
  public static Command of(String key, KeyStroke shortcut, Runnable work) {
    Command command = new Command(key, work);
    Marked marked = Marked.of(key);
    command.putValue(Action.NAME, marked.text());
    command.putValue(Action.MNEMONIC_KEY, marked.key());
    command.putValue(Action.DISPLAYED_MNEMONIC_INDEX_KEY, marked.at());
    command.putValue(Action.ACCELERATOR_KEY, shortcut);
    return command;
  }

  /**
   * A command that presses a button where it stands.
   *
   * @param name what it is called in a list
   * @param before brings the button into sight
   */
  static Command pressing(AbstractButton button, String name, Runnable before) {
    Command command =
        new Command(
            String.valueOf(button.getName()),
            () -> {
              before.run();
              SwingUtilities.invokeLater(button::doClick);
            });
    command.name(name);
    return command;
  }

  /** The key of its name in {@link Words}. */
  public String key() {
    return key;
  }

  /** Does it. */
  public void start() {
    work.run();
  }

  /** Says what exactly it would do. */
  public void name(String name) {
    putValue(Action.NAME, name);
    putValue(Action.SHORT_DESCRIPTION, name);
  }

  /** What it does, without marks for the keyboard; the name of the moment where it has one. */
  String title() {
    Object said = getValue(Action.SHORT_DESCRIPTION);
    return said == null ? Marked.of(key).bare() : said.toString();
  }

  /** The keys that start it; empty without any. */
  String keys() {
    KeyStroke stroke = (KeyStroke) getValue(Action.ACCELERATOR_KEY);
    if (stroke == null) {
      return "";
    }
    String held = InputEvent.getModifiersExText(stroke.getModifiers());
    return (held.isEmpty() ? "" : held + "+") + KeyEvent.getKeyText(stroke.getKeyCode());
  }

  /** An item for a menu. */
  public JMenuItem menuItem() {
    return named(new JMenuItem(this), "menu:");
  }

  /** A button with the short name, whatever the command is called at the moment. */
  public JButton button() {
    JButton button = new JButton(this);
    button.setHideActionText(true);
    button.setText(Marked.of(key).bare());
    button.setMnemonic(0);
    return named(button, "button:");
  }

  /** Names a button after the command, for those who look it up. */
  public <B extends AbstractButton> B named(B button, String kind) {
    button.setName(kind + key);
    return button;
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    start();
  }
}
