package plyworth.workbench.robustness.turn;

import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.PluginFailure;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.ValueModel;

/**
 * Two structures, scored in full in one world after another.
 *
 * @param catalog the plugins
 * @param one the first
 * @param other the second
 */
public record Duel(PluginCatalog catalog, Structure one, Structure other) {

  /** By how much a structure that is ranked leads one that is not: more than any value. */
  public static final double OUT = 2;

  /**
   * What both are worth.
   *
   * @param model the value model
   * @param one what the first is worth; empty when it is blocked, excluded or cannot be judged
   * @param other what the second is worth
   */
  public record Bout(ValueModel model, Optional<Valuation> one, Optional<Valuation> other) {

    /**
     * By how much the first is worth more; {@link #OUT}, or less than none, where only one is
     * ranked, and NaN where none is.
     */
    public double lead() {
      if (one.isEmpty() && other.isEmpty()) {
        return Double.NaN;
      }
      if (one.isEmpty() || other.isEmpty()) {
        return one.isEmpty() ? -OUT : OUT;
      }
      return one.get().value() - other.get().value();
    }

    /** How many figures that count are unknown. */
    long unknown() {
      return Stream.of(one, other).flatMap(Optional::stream).mapToLong(this::unknown).sum();
    }

    private long unknown(Valuation valuation) {
      return IntStream.range(0, model.criteria().size())
          .filter(c -> model.criteria().get(c).counts() && !valuation.parts().get(c).known())
          .count();
    }
  }

  /** The same the other way round. */
  public Duel turned() {
    return new Duel(catalog, other, one);
  }

  /** Both, scored in a world. */
  public Bout in(World world) {
    BoundPlugins bound = BoundPlugins.bind(catalog, world.study(), world.draw());
    ValueModel model =
        ValueModel.of(bound.criteria(), world.study(), world.study().activeWeighting());
    return new Bout(model, valued(bound, model, one), valued(bound, model, other));
  }

  private static Optional<Valuation> valued(
      BoundPlugins bound, ValueModel model, Structure structure) {
    Map<String, Assessment> assessments = bound.score(structure);
    double[] figures = bound.figures(assessments);
    boolean blocked = assessments.values().stream().anyMatch(Assessment::blocked);
    return model.group(figures, blocked) == Group.RANKED
        ? Optional.of(model.value(figures))
        : Optional.empty();
  }

  /**
   * The lead in a world; NaN also where a plugin cannot score it, or leaves more figures unknown.
   *
   * @param unknown how many figures that count are unknown at present
   */
  double lead(World world, long unknown) {
    try {
      Bout bout = in(world);
      return bout.unknown() > unknown ? Double.NaN : bout.lead();
    } catch (PluginFailure | IllegalArgumentException e) {
      return Double.NaN;
    }
  }
}
