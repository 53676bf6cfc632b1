package plyworth.workbench.ranking;

/** Where a candidate stands before any value is looked at. */
public enum Group {
  /** It is ranked. */
  RANKED,
  /** A limit lies between the bounds of a figure that is not refined yet. */
  OPEN,
  /** A limit concerns a figure that is unknown. */
  CANNOT_BE_JUDGED,
  /** A figure does not keep to a limit. */
  EXCLUDED,
  /** A plugin blocks it. */
  BLOCKED
}
