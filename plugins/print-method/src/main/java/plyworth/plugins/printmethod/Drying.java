package plyworth.plugins.printmethod;

/**
 * Heat that hot-air drying takes, kJ per m² of web (the same figure as MJ per 1000 m²).
 *
 * <p>q = Σ wⱼ·hⱼ + g·c·ΔT + q_air: evaporation, warming of the web, warming of the exhaust air. The
 * exhaust air usually decides, not the latent heat. Energy balance.
 *
 * @param concentration solvent in the exhaust of the dryer, g/m³ at 25 °C
 * @param humidityRise water that the exhaust takes up, kg per kg of dry air
 * @param airRise how much warmer the exhaust leaves than fresh air comes in, K
 * @param webRise how much the web is warmed, K
 */
public record Drying(double concentration, double humidityRise, double airRise, double webRise) {

  /** Density of air at 25 °C and 101.325 kPa, kg/m³ (ideal gas). */
  static final double AIR_DENSITY = 1.184;

  /** Heat capacity of air, kJ/(kg·K). */
  static final double AIR_CAPACITY = 1.006;

  /** Megajoules in a kilowatt-hour. */
  static final double MJ_PER_KWH = 3.6;

  /**
   * Heat of evaporation.
   *
   * @param water g/m²
   * @param solvent g/m²
   * @param blend what the solvent is
   */
  public double latent(double water, double solvent, Blend blend) {
    double ofWater = water * Fluid.named("water").latentHeat();
    return (ofWater + solvent * blend.latentHeat()) / 1000;
  }

  /**
   * Exhaust air that keeps solvent vapour at the running concentration, m³ per m² of web.
   *
   * @param solvent g/m²
   */
  public double airForSolvent(double solvent) {
    return solvent / concentration;
  }

  /**
   * Heat in the exhaust air that carries solvent off.
   *
   * @param solvent g/m²
   */
  public double airHeatForSolvent(double solvent) {
    return airForSolvent(solvent) * AIR_DENSITY * AIR_CAPACITY * airRise;
  }

  /**
   * Heat in the exhaust air that carries water off: dry air w/Δx.
   *
   * @param water g/m²
   */
  public double airHeatForWater(double water) {
    return water / 1000 / humidityRise * AIR_CAPACITY * airRise;
  }

  /**
   * Heat in the warmed web.
   *
   * @param grammage g/m²
   * @param capacity heat capacity, J/(kg·K)
   */
  public double webHeat(double grammage, double capacity) {
    return grammage / 1000 * capacity / 1000 * webRise;
  }
}
