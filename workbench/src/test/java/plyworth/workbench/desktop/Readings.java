package plyworth.workbench.desktop;

import java.awt.event.KeyEvent;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;

/** Works the view of what was measured, and its dialog. */
final class Readings {

  private Readings() {}

  static void goToMeasured(OpenWindow window) {
    window.shortcut(KeyEvent.VK_7, KeyEvent.VK_SHIFT);
    Screen.get("button:today.add", JButton.class);
  }

  /** Presses a button that opens a dialog, without waiting for it to close. */
  static void ask(String button) {
    JButton asking = Screen.get(button, JButton.class);
    SwingUtilities.invokeLater(asking::doClick);
    Screen.get("reading", JDialog.class);
  }

  static void write(String field, String text) {
    JTextField written = Screen.get("reading-" + field, JTextField.class);
    Screen.on(
        () -> {
          written.setText(text);
          return null;
        });
  }

  static void choose(String box, String beginning) {
    JComboBox<?> chosen = Screen.get("reading-" + box, JComboBox.class);
    Screen.on(
        () -> {
          for (int i = 0; i < chosen.getItemCount(); i++) {
            if (chosen.getItemAt(i).toString().startsWith(beginning)) {
              chosen.setSelectedIndex(i);
              return null;
            }
          }
          throw new AssertionError(beginning + " is not offered");
        });
  }

  static void take() {
    Screen.press("button:reading.done");
    Screen.await("the dialog is gone", () -> Screen.find("reading", JDialog.class).isEmpty());
  }

  static String cell(String table, int row, int column) {
    return Screen.on(() -> Screen.get(table, JTable.class).getValueAt(row, column).toString());
  }

  static int rows(String table) {
    return Screen.find(table, JTable.class).map(JTable::getRowCount).orElse(0);
  }

  static String refusal(String field) {
    return Screen.find("reading-" + field + "-refusal", JTextArea.class)
        .map(JTextArea::getText)
        .orElse("");
  }
}
