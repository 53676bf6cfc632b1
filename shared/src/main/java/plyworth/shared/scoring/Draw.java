package plyworth.shared.scoring;

import java.util.function.ToDoubleFunction;
import plyworth.shared.quantity.Range;

/**
 * Picks one figure out of each uncertain input. One draw is one possible world: the same input gets
 * the same figure wherever it is read.
 */
@FunctionalInterface
public interface Draw {

  /** Every input at its typical figure: the draw for tables and search. */
  Draw TYPICAL = (input, range) -> range.typical();

  /**
   * The figure of one input.
   *
   * @param input name of the input, for example {@code ldpe/o2-permeability}
   * @param range what it may be
   * @return a figure within the range; NaN when the range is unknown
   */
  double figure(String input, Range range);

  /**
   * The world in which each input stands at some quantile of its distribution: triangular between
   * low and high with its mode at the typical figure, on the logarithm where low is above 0
   * (inverse of the triangular distribution function).
   *
   * @param quantile of an input, by its name; 0 to 1
   */
  static Draw at(ToDoubleFunction<String> quantile) {
    return (input, range) -> RandomDraw.triangular(quantile.applyAsDouble(input), range);
  }

  /**
   * A random draw from the distributions of {@link #at}.
   *
   * @param seed same seed, same world
   */
  static Draw random(long seed) {
    return at(input -> RandomDraw.uniform(seed, input));
  }
}
