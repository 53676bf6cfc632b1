package plyworth.workbench.desktop.ranking;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import plyworth.shared.study.WeightsBy;
import plyworth.workbench.desktop.word.Words;

/** The ways to state weights that the window offers. */
public enum WeightsChoice {
  /** Numbers in any scale. */
  NUMBERS("weights.by.numbers"),
  /** Points for each swing. */
  SWING_POINTS("weights.by.swing-points"),
  /** Nothing but the order. */
  ORDER("weights.by.order");

  /** The slider of numbers goes this far, unless some weight goes farther. */
  static final double LARGEST_NUMBER = 10;

  private final String key;

  WeightsChoice(String key) {
    this.key = key;
  }

  static WeightsChoice of(WeightsBy by) {
    if (by instanceof WeightsBy.SwingPoints) {
      return SWING_POINTS;
    }
    return by instanceof WeightsBy.RankOrder ? ORDER : NUMBERS;
  }

  /** Weights stated this way: as near as whole points, tenths of a number or places come. */
  WeightsBy from(Map<String, Double> weights) {
    double largest = weights.values().stream().mapToDouble(w -> w).max().orElse(0);
    return switch (this) {
      case NUMBERS ->
          new WeightsBy.Numbers(
              each(weights, w -> Math.rint(10 * w / largest * LARGEST_NUMBER) / 10));
      case SWING_POINTS ->
          new WeightsBy.SwingPoints(
              each(weights, w -> Math.rint(w / largest * WeightsBy.SwingPoints.MOST)));
      case ORDER -> new WeightsBy.RankOrder(inOrder(weights));
    };
  }

  private static Map<String, Double> each(
      Map<String, Double> weights, ToDoubleFunction<Double> stated) {
    Map<String, Double> all = new TreeMap<>(weights);
    all.values().removeIf(weight -> weight == 0);
    all.replaceAll((criterion, weight) -> stated.applyAsDouble(weight));
    return all;
  }

  private static List<String> inOrder(Map<String, Double> weights) {
    return weights.entrySet().stream()
        .filter(entry -> entry.getValue() > 0)
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .map(Map.Entry::getKey)
        .toList();
  }

  @Override
  public String toString() {
    return Words.of(key);
  }
}
