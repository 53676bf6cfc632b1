package plyworth.workbench.desktop;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Works a window by the keyboard alone: whatever it reaches, it reaches by keys. */
final class Keyboard {

  private static final int FARTHEST = 80;

  private final OpenWindow window;

  Keyboard(OpenWindow window) {
    this.window = window;
  }

  private static Component owner() {
    return Screen.on(() -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
  }

  private static boolean at(String name) {
    Component owner = owner();
    return owner != null && name.equals(owner.getName());
  }

  /** Waits until a part has the keyboard. */
  void awaits(String name) {
    Screen.await(name + " has the keyboard", () -> at(name));
  }

  void key(int key, int... held) {
    window.hand.key(key, held);
  }

  /** Without a window manager nobody gives the keyboard back when a dialog closes. */
  void regain() {
    window.regainKeyboard();
    Screen.await("something has the keyboard", () -> owner() != null);
  }

  /** Strikes Tab until a part has the keyboard, as somebody does who knows no shorter way. */
  void tabTo(String name) {
    regain();
    for (int i = 0; i < FARTHEST && !at(name); i++) {
      Component before = owner();
      key(KeyEvent.VK_TAB);
      Screen.await("the keyboard moves on", () -> owner() != null && owner() != before);
    }
    awaits(name);
  }

  /** Presses the button of that name by the space bar. */
  void press(String name) {
    tabTo(name);
    key(KeyEvent.VK_SPACE);
  }

  /** Types into the field that has the keyboard, in place of what stands there. */
  void write(String text) {
    JTextComponent field = (JTextComponent) owner();
    window.hand.menuKey(KeyEvent.VK_A);
    window.hand.type(text);
    Screen.await("it is written", () -> field.getText().equals(text));
  }

  /** Goes to a field and types into it. */
  void write(String field, String text) {
    tabTo(field);
    write(text);
  }

  /** Goes to a choice and strikes Down, or else Up, until an entry is chosen. */
  void choose(String box, String beginning) {
    tabTo(box);
    JComboBox<?> choice = (JComboBox<?>) owner();
    int wanted = Screen.on(() -> placeOf(choice, beginning));
    while (Screen.on(choice::getSelectedIndex) != wanted) {
      int now = Screen.on(choice::getSelectedIndex);
      key(now < wanted ? KeyEvent.VK_DOWN : KeyEvent.VK_UP);
      Screen.await("another is chosen", () -> choice.getSelectedIndex() != now);
    }
  }

  static int placeOf(JComboBox<?> choice, String beginning) {
    for (int i = 0; i < choice.getItemCount(); i++) {
      if (choice.getItemAt(i).toString().startsWith(beginning)) {
        return i;
      }
    }
    throw new AssertionError(beginning + " is not offered");
  }

  /** Strikes Down on a table until a row is selected. */
  void select(JTable table, int row) {
    Screen.await("the table has the keyboard", table::isFocusOwner);
    while (Screen.on(table::getSelectedRow) != row) {
      int now = Screen.on(table::getSelectedRow);
      key(now < row ? KeyEvent.VK_DOWN : KeyEvent.VK_UP);
      Screen.await("another row is selected", () -> table.getSelectedRow() != now);
    }
  }

  /** Types a name into the dialog that asks for a file, and Enter. */
  void nameFile(String dialog, Path file) {
    JFileChooser chooser = Screen.get(dialog, JFileChooser.class);
    Screen.await(
        "the name of the file has the keyboard",
        () ->
            owner() instanceof JTextComponent && SwingUtilities.isDescendingFrom(owner(), chooser));
    write(file.toString());
    key(KeyEvent.VK_ENTER);
    Screen.await(dialog + " is closed", () -> !chooser.isShowing());
  }

  static void awaitGone(String dialog) {
    Screen.await(dialog + " is closed", () -> Screen.find(dialog, JDialog.class).isEmpty());
  }
}
