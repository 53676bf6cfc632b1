package plyworth.plugins.barrier.laminate;

/**
 * One layer on the way of water.
 *
 * @param resistance resistance to water where the curve is 1, in any unit that all plies of a
 *     laminate share; NaN when unknown
 * @param water how many times more it conducts at a relative humidity
 */
public record Ply(double resistance, HumidityCurve water) {

  /** A resistance beyond which nothing passes, however the laminate goes on. */
  public static final double TIGHT = 1e18;

  /** No resistance is infinite, so that two tight plies share what lies between them. */
  public Ply {
    resistance = Math.min(resistance, TIGHT);
  }
}
