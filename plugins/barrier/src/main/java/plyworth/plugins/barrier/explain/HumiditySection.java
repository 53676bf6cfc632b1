package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.climate.StorageClimate;
import plyworth.plugins.barrier.laminate.HumidityProfile;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.Laminate;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** Relative humidity from the outer face of the laminate to the inner one. */
final class HumiditySection {

  /** Points along a layer. */
  private static final int POINTS = 8;

  private HumiditySection() {}

  /** One curve, when the water resistance of every layer is known. */
  static List<Section> of(BarrierModel model, Structure structure) {
    StorageClimate climate = model.climate();
    Laminate laminate =
        new FormedPack(model, structure).laminate(climate.season(), climate.inside());
    HumidityProfile profile = laminate.profile();
    if (Double.isNaN(profile.resistance())) {
      return List.of();
    }
    List<Double> depths = new ArrayList<>(List.of(0.0));
    List<Double> humidities = new ArrayList<>(List.of(100 * profile.faces()[0]));
    double depth = 0;
    for (int i = 0; i < laminate.layers().size(); i++) {
      Layer layer = laminate.layers().get(i);
      double gauge = model.context().gaugeUm(layer);
      for (int k = 1; k <= POINTS; k++) {
        double share = (double) k / POINTS;
        depths.add(depth + share * gauge);
        humidities.add(100 * profile.within(i, share));
      }
      depth += gauge;
    }
    return List.of(
        new Curves(
            Text.of("section.humidity"),
            Text.of("axis.depth"),
            Text.of("axis.humidity"),
            List.of(new Series(Text.of("series.humidity"), depths, humidities)),
            Text.of("basis.humidity")));
  }
}
