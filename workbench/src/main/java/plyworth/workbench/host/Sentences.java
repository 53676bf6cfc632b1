package plyworth.workbench.host;

import java.text.Format;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;

/**
 * Makes sentences of a plugin's texts, and finds words for what stands in its tables. A number is
 * written with sensible digits unless the sentence names a format of its own.
 */
public final class Sentences {

  private static final Pattern NO_LETTER = Pattern.compile("[^a-z0-9]+");
  private static final Pattern EDGE = Pattern.compile("(?<=^term\\.)-|-$");

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
      } else if (arguments[i] instanceof String word) {
        arguments[i] = word(plugin, word, locale);
      }
    }
    return format.format(arguments);
  }

  /**
   * What a word of a table, a bar or an argument is in a language: the text of which it is the key,
   * or the text under {@code term.} and the word itself, small and with hyphens; then the same for
   * what stands before and in brackets; else as it stands.
   */
  public static String word(ScoringPlugin plugin, String word, Locale locale) {
    ResourceBundle texts = plugin.texts(locale);
    String term = "term." + NO_LETTER.matcher(word.toLowerCase(Locale.ROOT)).replaceAll("-");
    for (String key : List.of(word, EDGE.matcher(term).replaceAll(""))) {
      if (!key.isEmpty() && texts.containsKey(key)) {
        return new MessageFormat(texts.getString(key), locale).format(new Object[0]);
      }
    }
    int bracket = word.indexOf(" (");
    return bracket > 0 && word.endsWith(")")
        ? word(plugin, word.substring(0, bracket), locale)
            + " ("
            + word(plugin, word.substring(bracket + 2, word.length() - 1), locale)
            + ")"
        : word;
  }
}
