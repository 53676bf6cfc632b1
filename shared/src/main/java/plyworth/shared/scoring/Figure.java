package plyworth.shared.scoring;

/** Figures that one plugin provides and others may need. */
public enum Figure {
  /** Packs that leave one lane of the filling machine, packs per minute and lane. */
  PACKS_PER_MINUTE("packs/min"),
  /** Share of the web that is cut away between packs, from 0 to below 1. */
  SKELETON_WASTE("1");

  private final String unit;

  Figure(String unit) {
    this.unit = unit;
  }

  /** Unit in plain spelling. */
  public String unit() {
    return unit;
  }
}
