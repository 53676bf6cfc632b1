package plyworth.workbench.host;

import java.text.Format;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;

/**
 * Makes sentences of a plugin's texts. A number is written with sensible digits unless the sentence
 * names a format of its own.
 */
public final class Sentences {

  private Sentences() {}

  /** The sentence of a text; the key itself when the plugin does not carry it. */
  public static String of(ScoringPlugin plugin, Text text, Locale locale) {
    String pattern;
    try {
      pattern = plugin.texts(locale).getString(text.key());
    } catch (MissingResourceException e) {
      return text.key();
    }
    MessageFormat format = new MessageFormat(pattern, locale);
    Format[] own = format.getFormatsByArgumentIndex();
    Object[] arguments = text.arguments().toArray();
    for (int i = 0; i < arguments.length; i++) {
      boolean plain = i >= own.length || own[i] == null;
      if (plain && arguments[i] instanceof Number number) {
        arguments[i] = Digits.sensible(number.doubleValue());
      }
    }
    return format.format(arguments);
  }
}
