package plyworth.shared.material;

/** How far a figure can be trusted, by where it comes from. */
public enum SourceKind {
  /** Read in the source that is named. */
  PUBLISHED,
  /** Computed from figures that were read. */
  DERIVED,
  /** Estimated; no source gives it. */
  JUDGEMENT,
  /** Recalled, not read. */
  MEMORY,
  /** A rule of the trade without a source. */
  PRACTICE,
  /** Measured by the user or for them. */
  MEASURED
}
