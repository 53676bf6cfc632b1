package plyworth.workbench.desktop.session;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** The folder in which each system keeps what a program remembers for its user. */
public final class UserFolder {

  private UserFolder() {}

  /** The folder of this user on this system. */
  public static Path here() {
    return of(
        System.getProperty("os.name"), Path.of(System.getProperty("user.home")), System.getenv());
  }

  /** By the customs of the system; XDG Base Directory where there are no others. */
  static Path of(String system, Path home, Map<String, String> environment) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return set(environment, "APPDATA", home.resolve("AppData").resolve("Roaming"))
          .resolve("Plyworth");
    }
    return name.startsWith("mac")
        ? home.resolve("Library").resolve("Application Support").resolve("Plyworth")
        : set(environment, "XDG_CONFIG_HOME", home.resolve(".config")).resolve("plyworth");
  }

  private static Path set(Map<String, String> environment, String variable, Path otherwise) {
    String value = environment.getOrDefault(variable, "");
    return value.isEmpty() ? otherwise : Path.of(value);
  }
}
