package plyworth.workbench.desktop.word;

import java.util.Locale;
import java.util.ResourceBundle;

/**
 * Names of material properties in the language in force. English uses their ids, which files and
 * the command line speak; so does every language for a property that it has no name for.
 */
public final class PropertyNames {

  private PropertyNames() {}

  /** What a property is called in the language in force. */
  public static String of(String id) {
    if (Language.inForce() == Language.ENGLISH) {
      return id;
    }
    ResourceBundle names = in(Language.inForce().locale());
    return names.containsKey(id) ? names.getString(id) : id;
  }

  /** Names by id in a language that is not English. */
  static ResourceBundle in(Locale locale) {
    return ResourceBundle.getBundle(
        "plyworth.workbench.desktop.properties",
        locale,
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }
}
