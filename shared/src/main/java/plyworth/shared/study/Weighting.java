package plyworth.shared.study;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A named set of weights, one per stakeholder, say.
 *
 * @param name name on screens
 * @param weights weight by full criterion id ({@code plugin/criterion}); not negative, need not add
 *     up to 1; criteria that are absent weigh 0
 */
public record Weighting(String name, Map<String, Double> weights) {

  /**
   * Sorts the weights.
   *
   * @throws IllegalArgumentException for a negative or non-finite weight
   */
  public Weighting {
    weights = Collections.unmodifiableMap(new TreeMap<>(weights));
    weights.forEach(
        (criterion, weight) -> {
          if (!(weight >= 0) || !Double.isFinite(weight)) {
            throw new IllegalArgumentException(
                "the weight of " + criterion + " is " + weight + "; it must be 0 or more");
          }
        });
  }

  /** The weight of a criterion; 0 when it is absent. */
  public double weight(String criterion) {
    return weights.getOrDefault(criterion, 0.0);
  }

  /** The same with one weight changed. */
  public Weighting with(String criterion, double weight) {
    Map<String, Double> changed = new TreeMap<>(weights);
    changed.put(criterion, weight);
    return new Weighting(name, changed);
  }
}
