package plyworth.workbench.desktop.word;

import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
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
    return word("family.", material.family());
  }

  /** The tags of a material that rules speak of; as they are written where there is no word. */
  public static String kinds(Material material) {
    return material.kinds().stream()
        .map(kind -> word("kind.", kind))
        .collect(Collectors.joining(", "));
  }

  /** What the figures of a material describe; as it is written where there is no word for it. */
  public static String basis(Material material) {
    return word("basis.", material.basis());
  }

  private static String word(String begins, String written) {
    ResourceBundle words = Language.inForce().words();
    String key = begins + written;
    return words.containsKey(key) ? words.getString(key) : written;
  }

  /** Names by id in a language that is not English. */
  static ResourceBundle in(Locale locale) {
    return ResourceBundle.getBundle(
        "plyworth.workbench.desktop.materials",
        locale,
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }
}
