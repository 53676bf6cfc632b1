package plyworth.plugins.barrier;

import java.util.Locale;
import java.util.ResourceBundle;

/** Words for the cells of tables, which take no sentences. */
final class Words {

  private static final ResourceBundle TEXTS =
      ResourceBundle.getBundle(
          Words.class.getPackageName() + ".texts", Locale.ENGLISH, Words.class.getClassLoader());

  private Words() {}

  /** The word of a key. */
  static String of(String key) {
    return TEXTS.getString(key);
  }
}
