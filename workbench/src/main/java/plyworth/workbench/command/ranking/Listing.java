package plyworth.workbench.command.ranking;

/** Which of the best a ranking lists. */
public enum Listing {
  /** The best of each kind of barrier, printing and sealant. */
  KINDS,
  /** The best, however alike. */
  ALL
}
