package plyworth.shared.structure;

/** Which side of a two-sided web faces the outside of the pack, where it matters. */
public enum Side {
  /** Not stated. */
  UNSTATED,
  /** The bright side of a foil faces outside; the matt side faces the bond. */
  BRIGHT_OUT,
  /** The matt side of a foil faces outside. */
  MATT_OUT,
  /** The metallised or coated face of a film faces outside, towards the bond there. */
  METAL_OUT,
  /** The metallised or coated face of a film faces the inside of the pack. */
  METAL_IN
}
