package plyworth.workbench.host;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The runnable folder as the build puts it together. */
class AssembledPluginsTest {

  private static final Path HOME = Path.of("target/plyworth");

  private static List<String> names(Path folder) throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }

  @Test
  void everyBuiltInPluginLoadsFromIt() {
    PluginCatalog catalog = PluginCatalog.load(HOME.resolve("plugins"));
    assertThat(catalog.faults()).isEmpty();
    assertThat(catalog.plugins())
        .extracting(LoadedPlugin::id)
        .containsExactlyInAnyOrder(
            "barrier", "cost", "machinability", "print-method", "recyclability", "supply");
  }

  @Test
  void aPluginBringsItsLibrariesInAFolderOfItsOwnAndLendsThemToNobody() throws Exception {
    assertThat(names(HOME.resolve("plugins/plyworth-plugin-barrier")))
        .anyMatch(name -> name.startsWith("plyworth-plugin-barrier"))
        .anyMatch(name -> name.startsWith("hipparchus-ode"))
        .anyMatch(name -> name.startsWith("hipparchus-core"));
    assertThat(names(HOME.resolve("lib"))).noneMatch(name -> name.startsWith("hipparchus-ode"));
  }
}
