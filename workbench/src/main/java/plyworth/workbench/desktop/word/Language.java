package plyworth.workbench.desktop.word;

import java.util.Locale;
import java.util.ResourceBundle;
import javax.swing.JComponent;

/** A language of the window, and the one that is in force. */
public enum Language {
  /** English. */
  ENGLISH(Locale.ENGLISH),
  /** Simplified Chinese. */
  CHINESE(Locale.SIMPLIFIED_CHINESE);

  private static final ResourceBundle.Control WITHOUT_FALLBACK =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private static volatile Language inForce = ENGLISH;

  private final Locale locale;

  Language(Locale locale) {
    this.locale = locale;
  }

  /** The language in force; may be asked on any thread. */
  public static Language inForce() {
    return inForce;
  }

  /** The language of a system that is set to a locale: Chinese there, English elsewhere. */
  public static Language of(Locale system) {
    return system.getLanguage().equals(CHINESE.locale.getLanguage()) ? CHINESE : ENGLISH;
  }

  /** Puts this language in force; what is built from now on speaks it. */
  public void speak() {
    inForce = this;
    JComponent.setDefaultLocale(locale);
  }

  /** The locale of its texts. */
  public Locale locale() {
    return locale;
  }

  /** The texts of the window in this language. */
  ResourceBundle words() {
    return ResourceBundle.getBundle("plyworth.workbench.desktop.words", locale, WITHOUT_FALLBACK);
  }
}
