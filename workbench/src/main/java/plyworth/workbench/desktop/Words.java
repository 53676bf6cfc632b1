package plyworth.workbench.desktop;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of the window. */
final class Words {

  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("plyworth.workbench.desktop.words", Locale.ENGLISH);

  private Words() {}

  /** The text of a key, with its arguments put in. */
  static String of(String key, Object... arguments) {
    return new MessageFormat(BUNDLE.getString(key), Locale.ENGLISH).format(arguments);
  }
}
