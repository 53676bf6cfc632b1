package plyworth.plugins.barrier;

/**
 * Conductance of a formed and handled pack, amount/(day·force), way by way.
 *
 * @param face through its faces
 * @param edge sideways through the sealant in its seals
 * @param leak through open channels in its seals
 */
record PackTerms(double face, double edge, double leak) {

  /** All ways together. */
  double total() {
    return face + edge + leak;
  }
}
