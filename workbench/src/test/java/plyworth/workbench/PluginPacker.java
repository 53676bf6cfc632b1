package plyworth.workbench;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;
import plyworth.shared.scoring.InterfaceLevel;
import plyworth.shared.scoring.ScoringPlugin;

/**
 * Compiles a plugin from source against the shared module alone and packs it into a jar, as a
 * stranger would.
 *
 * @param id id in the manifest
 * @param level interface level in the manifest
 * @param service class that the jar offers
 * @param name name of the class in {@code source}, in the package {@code stranger}
 * @param source the source text
 * @param texts the sentences
 */
public record PluginPacker(
    String id, String level, String service, String name, String source, String texts) {

  private static final String SERVICE = "META-INF/services/plyworth.shared.scoring.ScoringPlugin";

  /** Writes the jar. */
  public Path pack(Path jar) {
    Manifest manifest = new Manifest();
    Attributes attributes = manifest.getMainAttributes();
    attributes.put(Attributes.Name.MANIFEST_VERSION, "1.0");
    attributes.putValue(InterfaceLevel.PLUGIN_ATTRIBUTE, id);
    attributes.putValue(InterfaceLevel.LEVEL_ATTRIBUTE, level);
    try {
      Path classes = Files.createTempDirectory("plugin-classes");
      compile(classes);
      try (OutputStream out = Files.newOutputStream(jar);
          JarOutputStream entries = new JarOutputStream(out, manifest)) {
        put(entries, SERVICE, service.getBytes(StandardCharsets.UTF_8));
        put(entries, "stranger/texts.properties", texts.getBytes(StandardCharsets.UTF_8));
        putAll(entries, classes);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return jar;
  }

  private static void putAll(JarOutputStream entries, Path classes) throws IOException {
    try (Stream<Path> files = Files.walk(classes)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        put(entries, classes.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
  }

  private static void put(JarOutputStream jar, String name, byte[] bytes) throws IOException {
    jar.putNextEntry(new JarEntry(name));
    jar.write(bytes);
    jar.closeEntry();
  }

  private void compile(Path classes) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      files.setLocationFromPaths(StandardLocation.CLASS_OUTPUT, List.of(classes));
      files.setLocationFromPaths(StandardLocation.CLASS_PATH, List.of(shared()));
      JavaFileObject text =
          new SimpleJavaFileObject(
              URI.create("string:///stranger/" + name + ".java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignored) {
              return source;
            }
          };
      if (!compiler.getTask(null, files, null, null, null, List.of(text)).call()) {
        throw new IllegalStateException("the plugin does not compile");
      }
    }
  }

  private static Path shared() {
    try {
      return Path.of(
          ScoringPlugin.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
