package plyworth.workbench.desktop.part;

import java.awt.Component;
import javax.swing.JLabel;
import plyworth.workbench.desktop.word.Words;

/**
 * A text with the letter that reaches it from the keyboard, written {@code &Open}.
 *
 * @param text the text without the mark
 * @param at index of the letter; -1 without one
 */
public record Marked(String text, int at) {

  /** The text of a key of {@link Words}. */
  public static Marked of(String key) {
    String written = Words.of(key);
    return new Marked(written.replace("&", ""), written.indexOf('&'));
  }

  /** The text without a letter that stands in brackets for the keyboard's sake alone. */
  public String bare() {
    return at > 0 && text.charAt(at - 1) == '('
        ? (text.substring(0, at - 1) + text.substring(at + 2)).strip()
        : text;
  }

  /** Code of the key; 0 without one. */
  public int key() {
    return at < 0 ? 0 : Character.toUpperCase(text.charAt(at));
  }

  /** A label that leads to a component. */
  public static JLabel label(String key, Component target) {
    Marked marked = of(key);
    JLabel label = new JLabel(marked.text());
    label.setLabelFor(target);
    label.setDisplayedMnemonic(marked.key());
    label.setDisplayedMnemonicIndex(marked.at());
    return label;
  }
}
