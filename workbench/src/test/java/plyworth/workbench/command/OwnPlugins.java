package plyworth.workbench.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder of the built-in plugins that a test may change. */
public final class OwnPlugins {

  private OwnPlugins() {}

  /** Copies every plugin, be it a jar or a folder. */
  public static void copyTo(Path folder) throws IOException {
    Path source = CommandLineRun.HOME.resolve("plugins");
    for (Path file : walk(source)) {
      Path copy = folder.resolve(source.relativize(file).toString());
      if (Files.isDirectory(file)) {
        Files.createDirectories(copy);
      } else {
        Files.copy(file, copy);
      }
    }
  }

  /** Takes a plugin away. */
  public static void remove(Path folder, String plugin) throws IOException {
    try (Stream<Path> plugins = Files.list(folder)) {
      Path found =
          plugins
              .filter(p -> p.getFileName().toString().startsWith("plyworth-plugin-" + plugin))
              .findFirst()
              .orElseThrow();
      for (Path file : walk(found).stream().sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  private static List<Path> walk(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.sorted().toList();
    }
  }
}
