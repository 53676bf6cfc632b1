package plyworth.workbench.desktop;

import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import plyworth.workbench.SmallStudy;

/** The positions of a study on screen, and a hand that fills them. */
final class PositionsOnScreen {

  private PositionsOnScreen() {}

  /** Opens a study and waits until its candidates are counted. */
  static OpenWindow open(Path file) {
    OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG);
    window.goTo(3);
    Screen.await("the table has the keyboard", () -> table().isFocusOwner());
    Screen.await("the candidates are counted", () -> said().contains("ranked"));
    return window;
  }

  static String said() {
    return Screen.on(() -> Screen.get("positions-count", JTextArea.class).getText());
  }

  static void awaitOther(String before) {
    Screen.await("the count follows", () -> !said().equals(before) && said().contains("ranked"));
  }

  static JTable table() {
    return Screen.get("positions", JTable.class);
  }

  static void select(int row) {
    JTable table = table();
    Screen.on(
        () -> {
          table.setRowSelectionInterval(row, row);
          return null;
        });
  }

  static int rowOf(String option) {
    JTable table = table();
    return Screen.on(
        () ->
            IntStream.range(0, table.getRowCount())
                .filter(r -> table.getValueAt(r, 1).toString().startsWith(option))
                .findFirst()
                .orElse(-1));
  }

  static String title(int row) {
    return Screen.on(() -> table().getValueAt(row, 0).toString());
  }

  static void type(String name, String text) {
    JTextField field = Screen.get(name, JTextField.class);
    Screen.on(
        () -> {
          field.requestFocusInWindow();
          field.setText(text);
          return null;
        });
    Screen.await(name + " has the keyboard", field::isFocusOwner);
  }

  static void turnTo(int tab) {
    JTabbedPane tabs = Screen.get("positions-tabs", JTabbedPane.class);
    Screen.on(
        () -> {
          tabs.setSelectedIndex(tab);
          return null;
        });
  }

  static String problem(String field) {
    return Screen.find(field + "-problem", JTextArea.class).map(JTextArea::getText).orElse("");
  }

  static void awaitKeyboard(String field) {
    JTextField text = Screen.get(field, JTextField.class);
    Screen.await(field + " has the keyboard", text::isFocusOwner);
  }

  static void strike(OpenWindow window, String text) {
    text.toUpperCase(Locale.ROOT).chars().forEach(window.hand::key);
  }
}
