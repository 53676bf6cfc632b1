package plyworth.workbench.desktop.word;

import java.util.Locale;
import java.util.ResourceBundle;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;

/**
 * Names of materials in the language in force. The library carries them in English; a material that
 * its user named otherwise keeps the name it was given.
 */
public final class MaterialNames {

  private static final MaterialLibrary STANDARD = MaterialLibrary.standard();

  private MaterialNames() {}

  /** What a material is called in the language in force. */
  public static String of(Material material) {
    boolean standard =
        Language.inForce() != Language.ENGLISH
            && STANDARD
                .find(material.id())
                .filter(s -> s.name().equals(material.name()))
                .isPresent();
    return standard ? in(Language.inForce().locale()).getString(material.id()) : material.name();
  }

  /** The family of a material; its id where the window has no word for it. */
  public static String family(Material material) {
    String key = "family." + material.family();
    ResourceBundle words = Language.inForce().words();
    return words.containsKey(key) ? words.getString(key) : material.family();
  }

  /** Names by id in a language that is not English. */
  static ResourceBundle in(Locale locale) {
    return ResourceBundle.getBundle(
        "plyworth.workbench.desktop.materials",
        locale,
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }
}
