package plyworth.shared.scoring;

import java.util.List;

/**
 * A named part of a layerwise state and how it is joined.
 *
 * @param name what it is, for messages
 * @param join how two of them are joined
 */
public record StatePart(String name, Join join) {

  /** Number of components of a state. */
  public static int size(List<StatePart> parts) {
    return parts.stream().mapToInt(p -> p.join().size()).sum();
  }

  /** Sets a state to the neutral one. */
  public static void neutral(List<StatePart> parts, double[] state) {
    int at = 0;
    for (StatePart part : parts) {
      part.join().neutral(state, at);
      at += part.join().size();
    }
  }

  /** Joins two states; {@code result} may be one of them only if no part needs both after. */
  public static void join(List<StatePart> parts, double[] outer, double[] inner, double[] result) {
    int at = 0;
    for (StatePart part : parts) {
      part.join().join(outer, inner, result, at);
      at += part.join().size();
    }
  }
}
