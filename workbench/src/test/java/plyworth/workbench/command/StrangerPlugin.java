package plyworth.workbench.command;

import java.nio.file.Path;
import plyworth.shared.scoring.InterfaceLevel;
import plyworth.workbench.PluginPacker;

/** A plugin that somebody else wrote, without a layerwise form: taint by the mass of the print. */
final class StrangerPlugin {

  private static final String TEXTS =
      """
      title = Taint
      risk = Taint risk
      caution = A screening figure: EN 1230 settles taint.
      limit = Print that taints
      limit-help = What a panel accepts; common practice.
      formula = Dry print per area over what a panel accepts.
      heavy = {0} g/m2 of print may taint the product.
      layer = Layer
      mass = Print, g/m2
      place = Layer from outside
      sum = Print so far
      note = EN 1230 settles taint.
      """;

  private static final String HEAD =
      """
      package stranger;
      import java.util.*;
      import plyworth.shared.material.PropertyDefinition;
      import plyworth.shared.scoring.*;
      import plyworth.shared.structure.*;
      public class Taint implements ScoringPlugin {
        public PluginCard card() {
          return new PluginCard("taint", Text.of("title"), "2.1", List.of(Text.of("caution")));
        }
        public List<PropertyDefinition> properties() { return List.of(); }
        public List<Parameter> parameters() {
          return List.of(new Parameter("accepted", Text.of("limit"), "g/m2", 4, 0.1, 10,
              Text.of("limit-help")));
        }
        public List<Criterion> criteria() {
          return List.of(new Criterion("risk", Text.of("risk"), "1", "23 °C",
              Criterion.Direction.LOWER, ValueFunction.linear(0, 1, 1, 0), 1, List.of(),
              Text.of("formula")));
        }
        public List<BlockingRule> blockingRules() {
          return List.of(new BlockingRule("heavy-print", Text.of("heavy", 4)));
        }
        public List<Figure> provides() { return List.of(); }
        public List<Figure> needs() { return List.of(); }
      """;

  private static final String TAIL =
      """
        public Scorer bind(ScoringContext context) {
          return new Scorer() {
            double print(Layer layer) {
              return context.kinds(layer).contains("ink") ? context.grammage(layer) : 0;
            }
            double risk(Structure structure) {
              return structure.layers().stream().mapToDouble(this::print).sum()
                  / context.parameter("accepted");
            }
            public Map<String, Text> notApplicable() { return Map.of(); }
            public Optional<Layerwise> layerwise() { return Optional.empty(); }
            public Assessment score(Structure structure, Map<Figure, Double> needed) {
              double risk = risk(structure);
              %s
              return new Assessment(Map.of("risk", new Outcome.Scored(risk)),
                  risk > 1 ? List.of(new Finding(Finding.Level.BLOCKS, "heavy-print",
                      Text.of("heavy", risk * context.parameter("accepted")), "EN 1230"))
                      : List.of(), Map.of());
            }
            public Explanation explain(Structure structure, Map<Figure, Double> needed) {
              List<List<Object>> rows = new ArrayList<>();
              List<String> labels = new ArrayList<>();
              List<Double> masses = new ArrayList<>();
              for (Layer layer : structure.layers()) {
                rows.add(List.of(layer.toString(), print(layer)));
                labels.add(layer.material());
                masses.add(print(layer));
              }
              Text basis = Text.of("formula");
              return new Explanation(List.of(
                  new Explanation.Table(Text.of("risk"),
                      List.of(Text.of("layer"), Text.of("mass")), rows, basis),
                  new Explanation.Bars(Text.of("risk"), "g/m2", labels, masses, basis),
                  new Explanation.Curves(Text.of("risk"), Text.of("place"), Text.of("mass"),
                      List.of(new Explanation.Series(Text.of("sum"), List.of(0.0, 1.0),
                          List.of(0.0, risk(structure)))), basis),
                  new Explanation.Note(Text.of("note"), basis)));
            }
          };
        }
      }
      """;

  private StrangerPlugin() {}

  /** Puts it into a folder. */
  static Path in(Path folder) {
    return in(folder, "");
  }

  /** The same with a statement that is run in every score. */
  static Path in(Path folder, String statement) {
    return new PluginPacker(
            "taint",
            Integer.toString(InterfaceLevel.CURRENT),
            "stranger.Taint",
            "Taint",
            HEAD + TAIL.formatted(statement),
            TEXTS)
        .pack(folder.resolve("taint.jar"));
  }
}
