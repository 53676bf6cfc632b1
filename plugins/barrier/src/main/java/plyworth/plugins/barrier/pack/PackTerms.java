package plyworth.plugins.barrier.pack;

/**
 * Conductance of a formed and handled pack, amount/(day·force), way by way.
 *
 * @param face through its faces
 * @param edge sideways through the sealant in its seals
 * @param leak through open channels in its seals
 */
public record PackTerms(double face, double edge, double leak) {

  /** All ways together. */
  public double total() {
    return face + edge + leak;
  }
}
