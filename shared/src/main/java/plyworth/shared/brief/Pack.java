package plyworth.shared.brief;

/**
 * The pack and its geometry.
 *
 * @param format pack format
 * @param widthMm flat width of the pack, mm
 * @param lengthMm length of the pack from cut to cut, mm
 * @param sealWidthMm width of the transverse or edge seals, mm
 * @param overlapMm one fin leg, or the lap of a lap seal, mm; 0 where the format has none
 * @param headspaceCm3 gas enclosed, cm³
 */
public record Pack(
    Format format,
    double widthMm,
    double lengthMm,
    double sealWidthMm,
    double overlapMm,
    double headspaceCm3) {

  /** Pack formats; the web of one lane follows the usual make-up of each (common practice). */
  public enum Format {
    /** Stick pack: one strip, lap seal along the length, two end seals. */
    STICK,
    /** Flat sachet of two webs, sealed on four sides. */
    SACHET_FOUR_SIDE,
    /** Flat sachet of one folded web, sealed on three sides. */
    SACHET_FOLDED,
    /** Pillow pack: one web, fin seal along the length, two end seals. */
    PILLOW
  }

  /** Checks the figures. */
  public Pack {
    Check.positive("the pack width", widthMm, "mm");
    Check.positive("the pack length", lengthMm, "mm");
    Check.positive("the seal width", sealWidthMm, "mm");
    Check.notNegative("the overlap", overlapMm, "mm");
    Check.notNegative("the head-space", headspaceCm3, "cm³");
    if (2 * sealWidthMm >= lengthMm) {
      throw new IllegalArgumentException("two seals of the pack leave no room for the product");
    }
  }

  /** Developed width of one lane, mm: all the film across the web that one pack takes. */
  public double laneWidthMm() {
    return switch (format) {
      case STICK -> 2 * widthMm + overlapMm;
      case SACHET_FOUR_SIDE -> 2 * widthMm;
      case SACHET_FOLDED -> 2 * lengthMm;
      case PILLOW -> 2 * widthMm + 2 * overlapMm;
    };
  }

  /** Length of web that one pack takes, mm. */
  public double repeatMm() {
    return format == Format.SACHET_FOLDED ? widthMm : lengthMm;
  }

  /** Laminate in one pack, m². */
  public double filmAreaM2() {
    return laneWidthMm() * repeatMm() * 1e-6;
  }

  /** Both faces through which things permeate, m²: twice width times length. */
  public double faceAreaM2() {
    return 2 * widthMm * lengthMm * 1e-6;
  }

  /** Length of seal along which things creep out sideways, mm. */
  public double sealedEdgeMm() {
    return switch (format) {
      case STICK, PILLOW -> 2 * widthMm + lengthMm;
      case SACHET_FOUR_SIDE -> 2 * (widthMm + lengthMm);
      case SACHET_FOLDED -> widthMm + 2 * lengthMm;
    };
  }
}
