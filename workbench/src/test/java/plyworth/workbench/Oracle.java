package plyworth.workbench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Limit;
import plyworth.workbench.host.BoundPlugin;

/**
 * Scores and ranks structures one by one in the plainest way, to check the fast ways against.
 * Shares no code with them.
 */
public final class Oracle {

  /** Where a structure stands. */
  public enum Standing {
    /** In the ranking. */
    RANKED,
    /** A limit concerns an unknown figure. */
    CANNOT_BE_JUDGED,
    /** A limit is not kept. */
    EXCLUDED,
    /** A plugin blocks it. */
    BLOCKED
  }

  /**
   * A structure with its figures.
   *
   * @param path its number
   * @param structure its layers
   * @param figures figure by full criterion id, NaN when unknown; what does not apply is absent
   * @param blocked whether a plugin blocks it
   */
  public record Scored(
      long path, Structure structure, Map<String, Double> figures, boolean blocked) {}

  /**
   * A structure with its value.
   *
   * @param scored the structure
   * @param standing where it stands
   * @param value value with the unknown at its worst
   * @param valueHigh value with the unknown at its best
   */
  public record Judged(Scored scored, Standing standing, double value, double valueHigh) {}

  private final List<BoundPlugin> plugins;
  private final Map<String, ValueFunction> functions = new TreeMap<>();

  /** An oracle over plugins, providers first, and value functions that differ from theirs. */
  public Oracle(List<BoundPlugin> plugins, Map<String, ValueFunction> functions) {
    this.plugins = plugins;
    for (BoundPlugin plugin : plugins) {
      for (Criterion criterion : plugin.plugin().criteria()) {
        this.functions.put(plugin.id() + "/" + criterion.id(), criterion.value());
      }
    }
    this.functions.putAll(functions);
  }

  /** Scores one structure. */
  public Scored score(long path, Structure structure) {
    Map<Figure, Double> provided = new EnumMap<>(Figure.class);
    Map<String, Double> figures = new LinkedHashMap<>();
    boolean blocked = false;
    for (BoundPlugin plugin : plugins) {
      Map<Figure, Double> needed = new EnumMap<>(provided);
      needed.keySet().retainAll(plugin.plugin().needs());
      Assessment assessment = plugin.scorer().score(structure, needed);
      provided.putAll(assessment.provided());
      blocked |= assessment.blocked();
      assessment
          .outcomes()
          .forEach(
              (id, outcome) -> {
                if (outcome instanceof Outcome.Scored scored) {
                  figures.put(plugin.id() + "/" + id, scored.figure());
                } else if (outcome instanceof Outcome.DataMissing) {
                  figures.put(plugin.id() + "/" + id, Double.NaN);
                }
              });
    }
    return new Scored(path, structure, figures, blocked);
  }

  /** Judges a scored structure under weights by full criterion id. */
  public Judged judge(Scored scored, Map<String, Double> weights, List<Limit> limits) {
    double sum = 0;
    double worst = 0;
    double best = 0;
    for (Map.Entry<String, Double> entry : scored.figures().entrySet()) {
      double weight = weights.getOrDefault(entry.getKey(), 0.0);
      double value = functions.get(entry.getKey()).value(entry.getValue());
      sum += weight;
      worst += weight * (Double.isNaN(value) ? 0 : value);
      best += weight * (Double.isNaN(value) ? 1 : value);
    }
    return new Judged(
        scored, standing(scored, limits), sum == 0 ? 0 : worst / sum, sum == 0 ? 0 : best / sum);
  }

  private static Standing standing(Scored scored, List<Limit> limits) {
    if (scored.blocked()) {
      return Standing.BLOCKED;
    }
    List<Limit> applicable =
        limits.stream().filter(l -> scored.figures().containsKey(l.criterion())).toList();
    List<Limit> known =
        applicable.stream()
            .filter(l -> !Double.isNaN(scored.figures().get(l.criterion())))
            .toList();
    if (known.stream().anyMatch(l -> !l.allows(scored.figures().get(l.criterion())))) {
      return Standing.EXCLUDED;
    }
    return known.size() < applicable.size() ? Standing.CANNOT_BE_JUDGED : Standing.RANKED;
  }

  /** All that are ranked, best first, on equal values the lower path number. */
  public List<Judged> rank(List<Scored> all, Map<String, Double> weights, List<Limit> limits) {
    List<Judged> ranked = new ArrayList<>();
    for (Scored scored : all) {
      Judged judged = judge(scored, weights, limits);
      if (judged.standing() == Standing.RANKED) {
        ranked.add(judged);
      }
    }
    ranked.sort(
        Comparator.comparingDouble((Judged j) -> -j.value())
            .thenComparingLong(j -> j.scored().path()));
    return ranked;
  }
}
