package plyworth.workbench.command;

/** Which of the best a ranking lists. */
enum Listing {
  /** The best of each kind of barrier, printing and sealant. */
  KINDS,
  /** The best, however alike. */
  ALL
}
