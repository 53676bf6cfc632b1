package plyworth.shared.study;

import java.util.Map;

/**
 * A named set of weights, one per stakeholder, say.
 *
 * @param name name on screens
 * @param by how the weights are stated
 */
public record Weighting(String name, WeightsBy by) {

  /**
   * A weighting by numbers.
   *
   * @param weights weight by full criterion id ({@code plugin/criterion})
   * @throws IllegalArgumentException for a negative or non-finite weight
   */
  public Weighting(String name, Map<String, Double> weights) {
    this(name, new WeightsBy.Numbers(weights));
  }

  /** Weight by full criterion id; need not add up to 1; criteria that are absent weigh 0. */
  public Map<String, Double> weights() {
    return by.weights();
  }

  /** The weight of a criterion; 0 when it is absent. */
  public double weight(String criterion) {
    return weights().getOrDefault(criterion, 0.0);
  }

  /** The same with another weight, other points or another place of one criterion. */
  public Weighting with(String criterion, double given) {
    return new Weighting(name, by.with(criterion, given));
  }
}
