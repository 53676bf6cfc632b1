package plyworth.workbench.command;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where the program lies: the folder that holds {@code lib}, {@code plugins} and {@code studies}.
 *
 * @param home that folder
 */
public record Workplace(Path home) {

  /** The property that names the folder, set by the start script. */
  public static final String PROPERTY = "plyworth.home";

  /**
   * The folder the property names, or the one around the {@code lib} this class was loaded from.
   */
  public static Workplace here() {
    String named = System.getProperty(PROPERTY);
    if (named != null) {
      return new Workplace(Path.of(named));
    }
    try {
      Path jar =
          Path.of(Workplace.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return new Workplace(jar.getParent().getParent());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Folder of the plugins that come with the program. */
  public Path plugins() {
    return home.resolve("plugins");
  }

  /** The example that opens when nothing is named. */
  public Path example() {
    return home.resolve("studies").resolve("sugar-stick.study.json");
  }

  /** Whether the example is there. */
  public boolean hasExample() {
    return Files.isReadable(example());
  }
}
