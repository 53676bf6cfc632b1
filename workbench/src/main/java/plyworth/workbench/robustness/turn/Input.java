package plyworth.workbench.robustness.turn;

import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;

/**
 * An input that can be changed alone.
 *
 * @param kind what sort of input
 * @param name its name: {@code material/property}, {@code @process/figure}, {@code
 *     plugin/parameter}, {@code order/packs}, or {@code weight:plugin/criterion}
 * @param unit unit in plain spelling; empty for a pure number
 * @param present what it is now; 1 for a table, which is moved as a whole
 * @param low lowest credible figure; NaN when no range is stated
 * @param high highest credible figure; NaN when no range is stated
 * @param lowest lower bound that is declared; negative infinity without
 * @param highest upper bound that is declared; infinity without
 */
public record Input(
    Kind kind,
    String name,
    String unit,
    double present,
    double low,
    double high,
    double lowest,
    double highest) {

  /** Sorts of inputs. */
  public enum Kind {
    /** A figure of a material or process, or another uncertain figure that plugins draw. */
    FIGURE,
    /** A table of figures along gauge or humidity, moved by a common factor. */
    TABLE,
    /** A parameter of a plugin. */
    SETTING,
    /** The number of packs in one order. */
    ORDER,
    /** The share of all weight on one criterion; the others keep their proportions. */
    WEIGHT
  }

  /** Name of the order size. */
  static final String ORDER_SIZE = "order/packs";

  /** What the name of a weight begins with. */
  static final String WEIGHT_OF = "weight:";

  /** A world in which it is {@code x} and all else is as it was. */
  public World in(World world, double x) {
    Study study = world.study();
    return switch (kind) {
      case FIGURE ->
          new World(study, (input, r) -> input.equals(name) ? x : world.draw().figure(input, r));
      case TABLE ->
          new World(
              study, (input, r) -> world.draw().figure(input, r) * (input.equals(name) ? x : 1));
      case SETTING -> {
        int slash = name.indexOf('/');
        yield new World(
            study.with(name.substring(0, slash), name.substring(slash + 1), x), world.draw());
      }
      case ORDER -> new World(study.with(study.brief().ordering(x)), world.draw());
      case WEIGHT -> new World(study.with(moved(study.activeWeighting(), x)), world.draw());
    };
  }

  /** All weights with this at a share, the others in proportion. */
  private Weighting moved(Weighting weighting, double share) {
    String criterion = name.substring(WEIGHT_OF.length());
    double sum = weighting.weights().values().stream().mapToDouble(w -> w).sum();
    double own = weighting.weight(criterion);
    Map<String, Double> moved = new TreeMap<>(weighting.weights());
    moved.replaceAll((id, weight) -> weight * (1 - share) / (sum - own));
    moved.put(criterion, share);
    return new Weighting(weighting.name(), moved);
  }

  /** Whether a figure is one that the stated range holds. */
  public boolean credible(double x) {
    return x >= low && x <= high;
  }
}
