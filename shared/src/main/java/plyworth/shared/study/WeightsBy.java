package plyworth.shared.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How the weights of a weighting are stated, and the weights that follow. Criteria by full id. */
public sealed interface WeightsBy {

  /** The weights that follow; criteria that are absent weigh 0. */
  Map<String, Double> weights();

  /** What is stated of a criterion: its weight, points, or place; 0 for nothing. */
  double given(String criterion);

  /** The same with something else stated of one criterion; a place moves the others on. */
  WeightsBy with(String criterion, double given);

  /**
   * Weights as such.
   *
   * @param weights not negative, need not add up to 1
   */
  record Numbers(Map<String, Double> weights) implements WeightsBy {

    /**
     * Sorts the weights.
     *
     * @throws IllegalArgumentException for a negative or non-finite weight
     */
    public Numbers {
      weights = Collections.unmodifiableMap(new TreeMap<>(weights));
      weights.forEach(
          (criterion, weight) -> {
            if (!(weight >= 0) || !Double.isFinite(weight)) {
              throw new IllegalArgumentException(
                  "the weight of " + criterion + " is " + weight + "; it must be 0 or more");
            }
          });
    }

    @Override
    public double given(String criterion) {
      return weights.getOrDefault(criterion, 0.0);
    }

    @Override
    public Numbers with(String criterion, double given) {
      return new Numbers(changed(weights, criterion, given));
    }
  }

  /**
   * Points for the swing of each criterion from the worst to the best of its value function: 100
   * for the swing that matters most, the others in proportion. Weights are shares of all points
   * (von Winterfeldt and Edwards, Decision Analysis and Behavioral Research, 1986; from memory).
   *
   * @param points 0 to 100
   */
  record SwingPoints(Map<String, Double> points) implements WeightsBy {

    /** Points of the swing that matters most. */
    public static final double MOST = 100;

    /**
     * Sorts the points.
     *
     * @throws IllegalArgumentException for points outside 0 to 100
     */
    public SwingPoints {
      points = Collections.unmodifiableMap(new TreeMap<>(points));
      points.forEach(
          (criterion, given) -> {
            if (!(given >= 0 && given <= MOST)) {
              throw new IllegalArgumentException(
                  "the swing of " + criterion + " has " + given + " points; it must be 0 to 100");
            }
          });
    }

    @Override
    public Map<String, Double> weights() {
      double all = points.values().stream().mapToDouble(p -> p).sum();
      Map<String, Double> weights = new TreeMap<>(points);
      weights.replaceAll((criterion, given) -> all > 0 ? given / all : 0);
      return weights;
    }

    @Override
    public double given(String criterion) {
      return points.getOrDefault(criterion, 0.0);
    }

    @Override
    public SwingPoints with(String criterion, double given) {
      return new SwingPoints(changed(points, criterion, given));
    }
  }

  /**
   * Nothing but the order of importance. The k-th of n weighs (1/n) Σ 1/i for i from k to n, the
   * centroid of all weights in that order (rank-order centroid; Barron and Barrett, Management
   * Science 42, 1996; from memory).
   *
   * @param criteria the most important first; each once
   */
  record RankOrder(List<String> criteria) implements WeightsBy {

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException when a criterion stands twice
     */
    public RankOrder {
      criteria = List.copyOf(criteria);
      if (criteria.stream().distinct().count() < criteria.size()) {
        throw new IllegalArgumentException("a criterion stands twice in the order: " + criteria);
      }
    }

    @Override
    public Map<String, Double> weights() {
      int n = criteria.size();
      Map<String, Double> weights = new TreeMap<>();
      double sum = 0;
      for (int k = n; k >= 1; k--) {
        sum += 1.0 / k;
        weights.put(criteria.get(k - 1), sum / n);
      }
      return weights;
    }

    /** Its place, 1 for the most important; 0 when it has none. */
    @Override
    public double given(String criterion) {
      return criteria.indexOf(criterion) + 1;
    }

    /** The order with a criterion moved to a place; 0 takes it out. */
    @Override
    public RankOrder with(String criterion, double given) {
      List<String> changed = new ArrayList<>(criteria);
      changed.remove(criterion);
      if (given >= 1) {
        changed.add((int) Math.min(given - 1, changed.size()), criterion);
      }
      return new RankOrder(changed);
    }
  }

  private static Map<String, Double> changed(
      Map<String, Double> numbers, String criterion, double number) {
    Map<String, Double> changed = new TreeMap<>(numbers);
    changed.put(criterion, number);
    return changed;
  }
}
