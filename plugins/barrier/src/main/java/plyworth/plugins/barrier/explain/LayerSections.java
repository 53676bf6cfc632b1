package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plyworth.plugins.barrier.climate.StorageClimate;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.Laminate;
import plyworth.plugins.barrier.pack.LayerData;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.scoring.Explanation.Bars;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** What each layer does against one permeant. */
final class LayerSections {

  private record Row(
      Layer layer, Optional<LayerData> data, double flat, double multiplier, double inPack) {}

  private final Permeant permeant;
  private final List<Row> rows = new ArrayList<>();
  private final double resistance;

  LayerSections(BarrierModel model, Structure structure, Permeant permeant) {
    this.permeant = permeant;
    StorageClimate climate = model.climate();
    Laminate laminate =
        new FormedPack(model, structure).laminate(climate.season(), climate.inside());
    Layer outer = null;
    for (int i = 0; i < laminate.layers().size(); i++) {
      Layer layer = laminate.layers().get(i);
      rows.add(
          new Row(
              layer,
              LayerData.of(model, layer, permeant),
              model.layers().flat(layer, permeant),
              model.layers().damage().multiplier(layer, outer),
              1 / laminate.resistance(i, permeant)));
      outer = layer;
    }
    resistance = rows.stream().mapToDouble(row -> 1 / row.inPack()).sum();
  }

  /** The layers with their properties and sources, and the share of the pack's resistance. */
  Section table() {
    List<Text> columns =
        List.of(
            Text.of("column.layer"),
            Text.of("column.property"),
            Text.of("column.figure"),
            Text.of("column.unit"),
            Text.of("column.flat", permeant.rateUnit()),
            Text.of("column.multiplier"),
            Text.of("column.in-pack", permeant.packUnit()),
            Text.of("column.share"),
            Text.of("column.origin"),
            Text.of("column.source"));
    List<List<Object>> cells = rows.stream().map(this::cells).toList();
    return new Table(Text.of(permeant.key() + ".layers"), columns, cells, Text.of("basis.layers"));
  }

  private List<Object> cells(Row row) {
    return List.of(
        row.layer().toString(),
        row.data().map(d -> d.property().id()).orElse("–"),
        row.data().map(LayerData::figure).orElse(Double.NaN),
        row.data().map(d -> d.property().unit()).orElse("–"),
        row.flat(),
        row.multiplier(),
        row.inPack(),
        share(row),
        row.data().map(d -> d.origin().kind().name().toLowerCase(Locale.ROOT)).orElse("–"),
        row.data().map(d -> d.origin().source()).orElse("–"));
  }

  /** Share of each layer in the resistance of the formed and handled pack. */
  Section bars() {
    return new Bars(
        Text.of(permeant.key() + ".bars"),
        "%",
        rows.stream().map(row -> row.layer().toString()).toList(),
        rows.stream().map(this::share).toList(),
        Text.of("basis.series"));
  }

  /** Share in %; a layer that lets nothing through takes all of it. */
  private double share(Row row) {
    double own = 1 / row.inPack();
    if (Double.isInfinite(resistance)) {
      return Double.isInfinite(own) ? 100 : 0;
    }
    return 100 * own / resistance;
  }
}
