package plyworth.plugins.printmethod;

/**
 * What one layer and its outer neighbour add.
 *
 * @param input solvent put down, kg per 1000 m²
 * @param emitted solvent to the air, kg per 1000 m²
 * @param water water put down by print, kg per 1000 m²
 * @param dry dry print, g/m²
 * @param energy drying and curing of print, kWh per 1000 m²
 * @param bits {@link SuitabilityBits}
 * @param exposedPrint whether the layer is print that must not touch the product
 */
record Contribution(
    double input,
    double emitted,
    double water,
    double dry,
    double energy,
    long bits,
    boolean exposedPrint) {

  static final Contribution NOTHING = new Contribution(0, 0, 0, 0, 0, 0, false);

  /** This piece followed inwards by another. */
  Contribution then(Contribution inner) {
    return new Contribution(
        input + inner.input,
        emitted + inner.emitted,
        water + inner.water,
        dry + inner.dry,
        energy + inner.energy,
        bits | inner.bits,
        inner.exposedPrint);
  }
}
