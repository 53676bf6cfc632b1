package plyworth.shared.scoring;

import java.util.List;

/**
 * Something a plugin measures on a structure.
 *
 * @param id identifier within the plugin: lower case, digits, hyphens
 * @param title name on screens
 * @param unit unit in plain spelling; empty for a pure number
 * @param conditions conditions it is measured under, for example {@code 23 °C}; may be empty
 * @param direction what is better
 * @param value its value function, with reference points fixed by the trade
 * @param weight weight in a new study; 0 for information
 * @param classes names of the classes when the figure is a class number 0, 1, 2 …; else empty
 * @param formula how it is computed and after which source, in one sentence
 */
public record Criterion(
    String id,
    Text title,
    String unit,
    String conditions,
    Direction direction,
    ValueFunction value,
    double weight,
    List<Text> classes,
    Text formula) {

  /** What is better. */
  public enum Direction {
    /** More is better. */
    HIGHER,
    /** Less is better. */
    LOWER,
    /** Best within a band. */
    BAND
  }

  /**
   * Checks the weight.
   *
   * @throws IllegalArgumentException for a negative or non-finite weight
   */
  public Criterion {
    classes = List.copyOf(classes);
    if (!(weight >= 0) || !Double.isFinite(weight)) {
      throw new IllegalArgumentException("the weight of " + id + " must not be negative");
    }
  }
}
