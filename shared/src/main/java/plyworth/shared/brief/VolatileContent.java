package plyworth.shared.brief;

/**
 * A volatile part of the product that must stay in the pack.
 *
 * @param substance generic name, for example {@code isopropanol}
 * @param massFraction share of the substance in the liquid, 0 to 1; the rest is water
 * @param chargeG liquid in one pack, g
 * @param allowedLossPercent share of the substance that may be lost over the shelf life, %
 */
public record VolatileContent(
    String substance, double massFraction, double chargeG, double allowedLossPercent) {

  /** Checks the figures. */
  public VolatileContent {
    Check.between("the mass fraction of " + substance, massFraction, 0, 1, "");
    Check.positive("the charge of liquid", chargeG, "g");
    Check.between("the allowed loss", allowedLossPercent, 0, 100, "%");
  }
}
