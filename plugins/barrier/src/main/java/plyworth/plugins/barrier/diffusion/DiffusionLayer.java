package plyworth.plugins.barrier.diffusion;

/**
 * A layer to diffuse through. Its concentration is S·a where a is the activity that drives, so that
 * activity is continuous from layer to layer.
 *
 * @param resistance thickness over permeability, m²·day/g per unit of activity; 0 or more
 * @param capacity solubility times thickness, g/m² per unit of activity; 0 or more
 */
public record DiffusionLayer(double resistance, double capacity) {

  /** Checks the figures. */
  public DiffusionLayer {
    if (!(resistance >= 0 && resistance < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "a layer to diffuse through has no resistance " + resistance);
    }
    if (!(capacity >= 0 && capacity < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("a layer to diffuse through has no capacity " + capacity);
    }
  }

  /**
   * A layer that follows Fick's law: its capacity is L²/D over its resistance.
   *
   * @param resistance m²·day/g per unit of activity
   * @param squareOverDiffusivity L²/D, days
   */
  public static DiffusionLayer of(double resistance, double squareOverDiffusivity) {
    return new DiffusionLayer(resistance, squareOverDiffusivity / resistance);
  }
}
