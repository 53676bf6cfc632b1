package plyworth.plugins.barrier.permeation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.shared.material.Material;
import plyworth.shared.material.Sourced;
import plyworth.shared.scoring.ScoringContext;

/**
 * How the materials follow humidity: those whose permeability to oxygen or water moves with it, by
 * material id.
 *
 * @param oxygen permeability to oxygen at a humidity over the tabulated one
 * @param water permeability to water at a humidity over its mean from dry to 90 % RH, the span it
 *     is measured over
 */
public record HumidityCurves(Map<String, HumidityCurve> oxygen, Map<String, HumidityCurve> water) {

  static final String OXYGEN_FACTOR = "o2-humidity-factor";
  static final String WATER_FACTOR = "wv-humidity-factor";

  /** The curves of the materials of a context. */
  public static HumidityCurves of(ScoringContext context) {
    Map<String, HumidityCurve> oxygen = new HashMap<>();
    Map<String, HumidityCurve> water = new HashMap<>();
    for (Material material : context.materials().all()) {
      if (material.property(OXYGEN_FACTOR).isPresent()) {
        oxygen.put(material.id(), curve(context, material, OXYGEN_FACTOR));
      }
      if (material.property(WATER_FACTOR).isPresent()) {
        HumidityCurve curve = curve(context, material, WATER_FACTOR);
        double measured = curve.mean(0, Permeant.WATER_MEASURED_AT);
        water.put(material.id(), curve.times(1 / measured));
      }
    }
    return new HumidityCurves(Map.copyOf(oxygen), Map.copyOf(water));
  }

  private static HumidityCurve curve(ScoringContext context, Material material, String id) {
    List<Sourced> points = material.property(id).orElseThrow().points();
    double[] humidities = new double[points.size()];
    double[] factors = new double[points.size()];
    for (int i = 0; i < humidities.length; i++) {
      double percent = Double.isNaN(points.get(i).at()) ? 0 : points.get(i).at();
      humidities[i] = percent / 100;
      factors[i] = context.property(material, id, percent);
    }
    return HumidityCurve.of(humidities, factors);
  }

  /** The curve of a material for a permeant; 1 throughout for what humidity does not move. */
  public HumidityCurve of(Material material, Permeant permeant) {
    return switch (permeant) {
      case OXYGEN -> oxygen.getOrDefault(material.id(), HumidityCurve.ONE);
      case WATER -> water.getOrDefault(material.id(), HumidityCurve.ONE);
      case ALCOHOL, ETHANOL -> HumidityCurve.ONE;
    };
  }
}
