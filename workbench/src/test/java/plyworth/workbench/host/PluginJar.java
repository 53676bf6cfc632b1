package plyworth.workbench.host;

import java.nio.file.Path;
import plyworth.shared.scoring.InterfaceLevel;
import plyworth.workbench.PluginPacker;

/** Compiles a plugin from source and packs it into a jar, as a stranger would. */
final class PluginJar {

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
    return new PluginPacker(
            id,
            level,
            service,
            "Sample",
            source(),
            "title=Sample\nterm.filling-line=line that fills\nword.never=never\n")
        .pack(folder.resolve(name));
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
