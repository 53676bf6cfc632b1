package plyworth.workbench.analysis;

/** How the best candidates are found. Both ways find the same. */
public enum Search {
  /** Every candidate is scored and counted; takes memory for all of them. */
  TABLE,
  /** Only candidates that may be among the best are scored; the others are not counted. */
  BOUNDED
}
