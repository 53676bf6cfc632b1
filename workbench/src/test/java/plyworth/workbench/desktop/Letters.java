package plyworth.workbench.desktop;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;

/** The letters that are struck with Alt in a window. */
final class Letters {

  private Letters() {}

  /** Letters that more than one part in sight answers to, with the texts of these parts. */
  static List<String> twice(JFrame window) {
    Map<Character, List<String>> all = new TreeMap<>();
    for (Component part : Screen.all(window.getRootPane())) {
      if (part.isShowing()) {
        note(part, all);
      }
    }
    return all.entrySet().stream()
        .filter(letter -> letter.getValue().size() > 1)
        .map(letter -> letter.getKey() + ": " + letter.getValue())
        .toList();
  }

  private static void note(Component part, Map<Character, List<String>> all) {
    if (part instanceof AbstractButton button) {
      note(button.getMnemonic(), button.getText(), all);
    } else if (part instanceof JLabel label) {
      note(label.getDisplayedMnemonic(), label.getText(), all);
    } else if (part instanceof JTabbedPane tabs) {
      for (int i = 0; i < tabs.getTabCount(); i++) {
        note(tabs.getMnemonicAt(i), tabs.getTitleAt(i), all);
      }
    }
  }

  private static void note(int letter, String text, Map<Character, List<String>> all) {
    if (letter > 0) {
      all.computeIfAbsent((char) letter, key -> new ArrayList<>()).add(text);
    }
  }
}
