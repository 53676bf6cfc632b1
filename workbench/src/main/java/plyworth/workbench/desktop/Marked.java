package plyworth.workbench.desktop;

import java.awt.Component;
import javax.swing.JLabel;

/**
 * A text with the letter that reaches it from the keyboard, written {@code &Open}.
 *
 * @param text the text without the mark
 * @param at index of the letter; -1 without one
 */
record Marked(String text, int at) {

  static Marked of(String key) {
    String written = Words.of(key);
    return new Marked(written.replace("&", ""), written.indexOf('&'));
  }

  /** The text without a letter that stands in brackets for the keyboard's sake alone. */
  String bare() {
    return at > 0 && text.charAt(at - 1) == '('
        ? (text.substring(0, at - 1) + text.substring(at + 2)).strip()
        : text;
  }

  /** Code of the key; 0 without one. */
  int key() {
    return at < 0 ? 0 : Character.toUpperCase(text.charAt(at));
  }

  /** A label that leads to a component. */
  static JLabel label(String key, Component target) {
    Marked marked = of(key);
    JLabel label = new JLabel(marked.text());
    label.setLabelFor(target);
    label.setDisplayedMnemonic(marked.key());
    label.setDisplayedMnemonicIndex(marked.at());
    return label;
  }
}
