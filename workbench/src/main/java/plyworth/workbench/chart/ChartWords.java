package plyworth.workbench.chart;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The texts of the ranking chart in a language.
 *
 * @param locale the language; one that is not carried reads English
 */
public record ChartWords(Locale locale) {

  private static final ResourceBundle.Control WITHOUT_FALLBACK =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  /** The text of a key, with its arguments put in. */
  String of(String key, Object... arguments) {
    ResourceBundle words =
        ResourceBundle.getBundle("plyworth.workbench.chart.words", locale, WITHOUT_FALLBACK);
    return new MessageFormat(words.getString(key), locale).format(arguments);
  }
}
