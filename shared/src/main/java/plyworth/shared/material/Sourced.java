package plyworth.shared.material;

import java.util.Objects;
import plyworth.shared.quantity.Range;

/**
 * One figure with its origin.
 *
 * @param at what it holds for, in the unit of {@link PropertyDefinition.Along}: a gauge, a relative
 *     humidity; NaN when it holds always
 * @param range low, typical, high
 * @param kind kind of origin
 * @param source the origin in words; never empty
 */
public record Sourced(double at, Range range, SourceKind kind, String source) {

  /** Refuses a figure without origin. */
  public Sourced {
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(kind, "kind");
    if (source.isBlank()) {
      throw new IllegalArgumentException("a figure needs a source");
    }
  }
}
