package plyworth.workbench.robustness.turn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;
import plyworth.workbench.robustness.HeardInputs;

/** Everything that the scores of two structures may depend on, told by listening to the plugins. */
public final class Inputs {

  private static final double FEWEST_PACKS = 1;
  private static final double MOST_PACKS = 1e12;

  private final Duel duel;
  private final World world;
  private final List<Input> found = new ArrayList<>();

  private Inputs(Duel duel, World world) {
    this.duel = duel;
    this.world = world;
  }

  /**
   * The inputs of two structures in a world: figures that some plugin draws while it scores them,
   * the parameters of every plugin, the order size, and the weights.
   */
  public static List<Input> of(Duel duel, World world) {
    Inputs inputs = new Inputs(duel, world);
    HeardInputs heard = new HeardInputs();
    ValueModel model = duel.in(new World(world.study(), heard.through(Draw.TYPICAL))).model();
    Map<String, Set<Range>> drawn = heard.all();
    inputs.settings();
    inputs.found.forEach(setting -> drawn.remove(setting.name()));
    drawn.forEach(inputs::figure);
    inputs.order();
    inputs.weights(model);
    return List.copyOf(inputs.found);
  }

  private void settings() {
    for (LoadedPlugin loaded : duel.catalog().plugins()) {
      Map<String, Double> set = world.study().settings().getOrDefault(loaded.id(), Map.of());
      for (Parameter parameter : loaded.plugin().parameters()) {
        found.add(
            new Input(
                Input.Kind.SETTING,
                loaded.id() + "/" + parameter.id(),
                parameter.unit(),
                set.getOrDefault(parameter.id(), parameter.standard()),
                Double.NaN,
                Double.NaN,
                parameter.lowest(),
                parameter.highest()));
      }
    }
  }

  /** A figure with one range, or a table whose figures are moved by one factor. */
  private void figure(String name, Set<Range> ranges) {
    Range range = ranges.iterator().next();
    String property = name.substring(name.indexOf('/') + 1);
    double lowest = bound(property, Double.NEGATIVE_INFINITY);
    double highest = bound(property, Double.POSITIVE_INFINITY);
    String unit = name.startsWith("@") ? processUnit(name) : unit(property);
    if (ranges.size() == 1) {
      found.add(
          new Input(
              Input.Kind.FIGURE,
              name,
              unit,
              range.typical(),
              range.low(),
              range.high(),
              lowest,
              highest));
    } else if (ranges.stream().allMatch(r -> r.low() > 0)) {
      double least = 0;
      double most = Double.POSITIVE_INFINITY;
      for (Range each : ranges) {
        least = Math.max(least, lowest / each.typical());
        most = Math.min(most, highest / each.typical());
      }
      found.add(
          new Input(
              Input.Kind.TABLE,
              name,
              "",
              1,
              range.low() / range.typical(),
              range.high() / range.typical(),
              least,
              most));
    }
  }

  /** The tightest bound that a plugin declares on one side; {@code open} where none does. */
  private double bound(String property, double open) {
    double tightest = open;
    for (PropertyDefinition definition : definitions(property)) {
      tightest =
          open < 0
              ? Math.max(tightest, definition.lowest())
              : Math.min(tightest, definition.highest());
    }
    return tightest;
  }

  private String unit(String property) {
    return definitions(property).stream().map(PropertyDefinition::unit).findFirst().orElse("");
  }

  private String processUnit(String name) {
    int slash = name.indexOf('/');
    return world
        .study()
        .processesAtHand()
        .require(name.substring(1, slash))
        .figures()
        .get(name.substring(slash + 1))
        .unit();
  }

  private List<PropertyDefinition> definitions(String property) {
    return duel.catalog().plugins().stream()
        .map(LoadedPlugin::plugin)
        .map(ScoringPlugin::properties)
        .flatMap(List::stream)
        .filter(definition -> definition.id().equals(property))
        .toList();
  }

  private void order() {
    found.add(
        new Input(
            Input.Kind.ORDER,
            Input.ORDER_SIZE,
            "packs",
            world.study().brief().order().packs(),
            Double.NaN,
            Double.NaN,
            FEWEST_PACKS,
            MOST_PACKS));
  }

  /** Where one criterion has all the weight, the others have no proportions to keep. */
  private void weights(ValueModel model) {
    for (Weighed weighed : model.criteria()) {
      if (weighed.criterion().applies() && weighed.weight() < 1) {
        found.add(
            new Input(
                Input.Kind.WEIGHT,
                Input.WEIGHT_OF + weighed.criterion().id(),
                "",
                weighed.weight(),
                Double.NaN,
                Double.NaN,
                0,
                1));
      }
    }
  }
}
