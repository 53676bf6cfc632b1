package plyworth.plugins.barrier.pack;

import plyworth.plugins.barrier.course.OxygenBalance;
import plyworth.plugins.barrier.permeation.LayerTransmission;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * The formed and handled pack as a laboratory measures it whole (ASTM F1307 for oxygen, ASTM D7709
 * for water vapour; numbers from memory): faces with their damage, seal edge and leaks together.
 */
public final class LaboratoryPack {

  private static final double MILLIGRAMS = 1000;

  private LaboratoryPack() {}

  /** Oxygen from air at 23 °C with 50 % RH on both sides, cm³/day. */
  static double oxygen(BarrierModel model, Structure structure) {
    double rate =
        FlatSheet.series(structure, (layer, outer) -> oxygenRate(model.layers(), layer, outer));
    double face = model.pack().faceM2() * rate;
    return inAir(face + edge(model, structure.innermost(), Permeant.OXYGEN) + oxygenLeak(model));
  }

  /** What a handled layer lets through of oxygen, cm³/(m²·day·bar). */
  public static double oxygenRate(LayerTransmission layers, Layer layer, Layer outer) {
    return layers.inLaboratory(layer, outer, Permeant.OXYGEN)
        * layers.curve(layer, Permeant.OXYGEN).value(Permeant.OXYGEN_QUOTED_AT);
  }

  /** Through all leaks at 23 °C, cm³/(day·bar). */
  public static double oxygenLeak(BarrierModel model) {
    return model.pack().leaks().conductance(Permeant.OXYGEN, Permeant.OXYGEN.measuredAtC());
  }

  /** cm³/day of oxygen at a conductance in cm³/(day·bar). */
  public static double inAir(double conductance) {
    return conductance * OxygenBalance.AIR_BAR;
  }

  /** Water vapour from 38 °C 90 % RH into a dry pack, mg/day. */
  static double water(BarrierModel model, Structure structure) {
    double rate =
        FlatSheet.intoDry(
            model,
            structure,
            (layer, outer) -> model.layers().inLaboratory(layer, outer, Permeant.WATER));
    double face = model.pack().faceM2() * rate;
    return milligrams(face + edge(model, structure.innermost(), Permeant.WATER) + waterLeak(model));
  }

  /** Through all leaks from 38 °C 90 % RH into dry, g/day. */
  public static double waterLeak(BarrierModel model) {
    double celsius = Permeant.WATER.measuredAtC();
    return model.pack().leaks().conductance(Permeant.WATER, celsius)
        * Permeant.WATER_MEASURED_AT
        * SaturatedVapour.pascal(celsius);
  }

  /** Milligrams of some grams. */
  public static double milligrams(double grams) {
    return MILLIGRAMS * grams;
  }

  /** Seal edge of a sealant, amount/day per unit of the force of measurement. */
  public static double edge(BarrierModel model, Layer sealant, Permeant permeant) {
    double within =
        permeant == Permeant.WATER ? Permeant.WATER_MEASURED_AT / 2 : Permeant.OXYGEN_QUOTED_AT;
    double permeability = model.layers().asSealantInLaboratory(sealant, permeant, within);
    return model.pack().edge(permeability, 2 * model.context().gaugeUm(sealant));
  }
}
