package plyworth.shared.scoring;

/**
 * Level of the plugin interface. A plugin names the level it was built against in its jar's
 * manifest, as {@code Plyworth-Interface-Level}; it is read before any class of the plugin is
 * loaded.
 */
public final class InterfaceLevel {

  /**
   * The level of this interface. What a plugin may use at a level stands in {@code
   * interface-level-N.txt} beside this class; the build fails when a line of it is gone or
   * something new is asked of plugins.
   */
  public static final int CURRENT = 1;

  /** Manifest attribute that names the plugin's id. */
  public static final String PLUGIN_ATTRIBUTE = "Plyworth-Plugin";

  /** Manifest attribute that names the interface level. */
  public static final String LEVEL_ATTRIBUTE = "Plyworth-Interface-Level";

  private InterfaceLevel() {}
}
