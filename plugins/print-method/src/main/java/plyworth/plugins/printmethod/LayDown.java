package plyworth.plugins.printmethod;

import plyworth.shared.structure.Layer;

/**
 * What putting one layer down takes; masses in g per m² of web, which is kg per 1000 m².
 *
 * @param layer the layer
 * @param by the process
 * @param dry dry lay-down
 */
record LayDown(Layer layer, WetProcess by, double dry) {

  /** Wet lay-down. */
  double wet() {
    return by.makeUp().wet(dry);
  }

  /** Water. */
  double water() {
    return wet() * by.makeUp().water();
  }

  /** Volatile organics put down: solvent input. */
  double solvent() {
    return wet() * by.makeUp().solvent();
  }

  /** Volatile organics that reach the air. */
  double emitted(double retained) {
    return by.abatement().emitted(solvent(), retained);
  }

  /** Heat of evaporation in a hot-air dryer, kJ/m². */
  double latentHeat(Drying drying) {
    return hotAir() ? drying.latent(water(), solvent(), by.blend()) : 0;
  }

  /** Heat in the exhaust air, kJ/m²: water decides for water-based ink, else solvent. */
  double airHeat(Drying drying) {
    if (!hotAir()) {
      return 0;
    }
    return by.kind() == InkKind.WATER
        ? drying.airHeatForWater(water())
        : drying.airHeatForSolvent(solvent());
  }

  private boolean hotAir() {
    return by.method().drying() == Method.Means.HOT_AIR;
  }
}
