package plyworth.workbench.desktop.word;

import java.text.MessageFormat;

/** The texts of the window, in the language in force. */
public final class Words {

  private Words() {}

  /** The text of a key, with its arguments put in. */
  public static String of(String key, Object... arguments) {
    Language language = Language.inForce();
    return new MessageFormat(language.words().getString(key), language.locale()).format(arguments);
  }
}
