package plyworth.shared.brief;

/**
 * How hard a pack is treated between forming and opening, in the conditions of ASTM F392 that a
 * laboratory flexes sheets by (test-laboratory pages; which condition stands for which treatment is
 * common practice).
 */
public enum Handling {
  /** A flat sheet, as it comes from the roll. */
  FLAT(0),
  /** Formed and filled, then left in peace: condition E, 20 partial strokes. */
  FORMED(20),
  /** Formed, cased and carried as usual: condition D, 20 full strokes. */
  SHIPPED(20),
  /** Carried far, loose or by post: condition C, 270 full strokes. */
  ROUGH(270);

  private final int strokes;

  Handling(int strokes) {
    this.strokes = strokes;
  }

  /** Flex strokes that stand for it; partial ones for {@link #FORMED}. */
  public int strokes() {
    return strokes;
  }
}
