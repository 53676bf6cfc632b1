package plyworth.plugins.machinability;

import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Machine.SealZone;
import plyworth.shared.brief.Pack;
import plyworth.shared.scoring.ScoringContext;

/**
 * What sealing and running depend on besides the structure.
 *
 * @param machine filling machine
 * @param pack pack
 * @param startC temperature of the web before the jaws close, °C
 * @param marginK how far above its seal initiation the interface must come, K
 * @param fusionHeat heat of fusion taken up by every sealable layer, J/kg
 * @param leastSealantUm gauge below which a coating is no sealant, µm
 * @param sameWayLap whether the two webs of a one-on-two zone lie the same way up
 */
record Settings(
    Machine machine,
    Pack pack,
    double startC,
    double marginK,
    double fusionHeat,
    double leastSealantUm,
    boolean sameWayLap) {

  static Settings of(ScoringContext context) {
    return new Settings(
        context.brief().machine(),
        context.brief().pack(),
        context.parameter("start-temperature"),
        context.parameter("seal-margin"),
        1000 * context.parameter("fusion-heat"),
        context.parameter("least-sealant"),
        context.parameter("same-way-lap") >= 0.5);
  }

  /** Contact resistance between jaw and web, m²·K/W. */
  double contact() {
    return 1 / machine.contactWm2K();
  }

  /** The curve of the thickest zone of the seal. */
  HeatingCurve thickest(Wall wall) {
    return HeatingCurve.of(wall, contact(), machine.zone(), sameWayLap);
  }

  /** The curve where one laminate lies against one. */
  HeatingCurve plain(Wall wall) {
    return HeatingCurve.of(wall, contact(), SealZone.ONE_ON_ONE, sameWayLap);
  }

  /** The stacks of the thickest zone of the seal. */
  SealStack thickest(SealStack stack, Walls webs) {
    return stack.pile(webs, contact(), machine.zone(), sameWayLap);
  }

  /** The stacks where one laminate lies against one. */
  SealStack plain(SealStack stack, Walls webs) {
    return stack.pile(webs, contact(), SealZone.ONE_ON_ONE, sameWayLap);
  }
}
