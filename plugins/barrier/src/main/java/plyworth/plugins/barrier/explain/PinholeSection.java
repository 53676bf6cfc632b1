package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.plugins.barrier.permeation.LayerTransmission;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** Foil two ways: as tabulated, and by its pinholes. */
final class PinholeSection {

  private PinholeSection() {}

  /** One table when the structure holds layers with pinholes, else none. */
  static List<Section> of(BarrierModel model, Structure structure) {
    List<List<Object>> rows = new ArrayList<>();
    for (Layer layer : structure.layers()) {
      double holes = model.context().property(layer, LayerTransmission.PINHOLES);
      if (!Double.isNaN(holes)) {
        for (Permeant permeant : Permeant.values()) {
          rows.add(
              List.of(
                  layer.toString(),
                  permeant.name().toLowerCase(Locale.ROOT),
                  permeant.rateUnit(),
                  holes,
                  model.layers().asTabulated(layer, permeant),
                  model.layers().throughPinholes(layer, permeant)));
        }
      }
    }
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Text> columns =
        List.of(
            Text.of("column.layer"),
            Text.of("column.permeant"),
            Text.of("column.unit"),
            Text.of("column.pinholes"),
            Text.of("column.tabulated"),
            Text.of("column.modelled"));
    return List.of(
        new Table(
            Text.of("section.pinholes"),
            columns,
            rows,
            Text.of(
                "basis.pinholes",
                model.context().parameter(BarrierParameters.PINHOLE_DIAMETER),
                model.context().parameter(BarrierParameters.PINHOLE_COVER))));
  }
}
