package plyworth.workbench.host;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URI;
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

/** Compiles a plugin from source and packs it into a jar, as a stranger would. */
final class PluginJar {

  private static final String SERVICE = "META-INF/services/plyworth.shared.scoring.ScoringPlugin";

  private final Path folder;
  private String id = "sample";
  private String level = Integer.toString(InterfaceLevel.CURRENT);
  private String body = "";
  private String needs = "";
  private String provides = "";
  private String service = "stranger.Sample";

  PluginJar(Path folder) {
    this.folder = folder;
  }

  PluginJar id(String newId) {
    id = newId;
    return this;
  }

  PluginJar level(String newLevel) {
    level = newLevel;
    return this;
  }

  /** Adds members to the plugin's class. */
  PluginJar body(String members) {
    body = members;
    return this;
  }

  PluginJar needs(String figure) {
    needs = "Figure." + figure;
    return this;
  }

  PluginJar provides(String figure) {
    provides = "Figure." + figure;
    return this;
  }

  PluginJar service(String className) {
    service = className;
    return this;
  }

  /** Writes the jar. */
  Path pack(String name) {
    Path jar = folder.resolve(name);
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
        put(
            entries,
            "stranger/texts.properties",
            "title=Sample\n".getBytes(StandardCharsets.UTF_8));
        try (Stream<Path> files = Files.walk(classes)) {
          for (Path file : files.filter(Files::isRegularFile).toList()) {
            put(entries, classes.relativize(file).toString(), Files.readAllBytes(file));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return jar;
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
      JavaFileObject source =
          new SimpleJavaFileObject(
              URI.create("string:///stranger/Sample.java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignored) {
              return source();
            }
          };
      if (!compiler.getTask(null, files, null, null, null, List.of(source)).call()) {
        throw new IllegalStateException("the sample plugin does not compile");
      }
    }
  }

  private String source() {
    return """
        package stranger;
        import java.util.*;
        import plyworth.shared.material.PropertyDefinition;
        import plyworth.shared.scoring.*;
        public class Sample implements ScoringPlugin {
          %s
          public PluginCard card() {
            return new PluginCard("%s", Text.of("title"), "1", List.of(Text.of("title")));
          }
          public List<PropertyDefinition> properties() { return List.of(); }
          public List<Parameter> parameters() { return List.of(); }
          public List<Criterion> criteria() {
            return List.of(new Criterion("layers", Text.of("title"), "1", "",
                Criterion.Direction.LOWER, ValueFunction.linear(0, 1, 20, 0), 1, List.of(),
                Text.of("title")));
          }
          public List<BlockingRule> blockingRules() { return List.of(); }
          public List<Figure> provides() { return List.of(%s); }
          public List<Figure> needs() { return List.of(%s); }
          public Scorer bind(ScoringContext context) { return null; }
        }
        """
        .formatted(body, id, provides, needs);
  }
}
