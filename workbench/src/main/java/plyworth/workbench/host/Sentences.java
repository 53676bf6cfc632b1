package plyworth.workbench.host;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;

/** Makes sentences of a plugin's texts. */
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
    Object[] arguments = text.arguments().stream().map(Sentences::argument).toArray();
    return new MessageFormat(pattern, locale).format(arguments);
  }

  private static Object argument(Object argument) {
    return argument instanceof Number number ? Digits.sensible(number.doubleValue()) : argument;
  }
}
