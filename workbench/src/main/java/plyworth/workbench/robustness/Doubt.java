package plyworth.workbench.robustness;

/** What is taken to be known of the weights when they are drawn at random. */
public enum Doubt {
  /** They are what the weighting says. */
  EXACT,
  /** They lie around the weighting (Dirichlet). */
  AROUND,
  /** Only their order is known: uniform over all weights in that order. */
  ORDER,
  /** Nothing is known: uniform over all weights. */
  ANY
}
