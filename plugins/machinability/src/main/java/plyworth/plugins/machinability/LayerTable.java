package plyworth.plugins.machinability;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** The figures of every layer, with their sources. */
final class LayerTable {

  private static final List<String> READ =
      List.of(Inputs.MODULUS, Inputs.CONDUCTIVITY, Inputs.HEAT_CAPACITY);

  private LayerTable() {}

  static Table of(MachinabilityScorer scorer, Structure structure) {
    List<LayerFigures> figures = scorer.layers(structure);
    double tensile = Beam.of(figures).tensile();
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      rows.add(row(scorer, structure.layers().get(i), figures.get(i), tensile));
    }
    return new Table(
        Text.of("explain.layers"),
        List.of(
            Text.of("column.layer"),
            Text.of("column.gauge"),
            Text.of("column.modulus"),
            Text.of("column.share"),
            Text.of("column.conductivity"),
            Text.of("column.heat-capacity"),
            Text.of("column.resistance"),
            Text.of("column.capacity"),
            Text.of("column.sources")),
        rows,
        Text.of("explain.layers.basis"));
  }

  private static List<Object> row(
      MachinabilityScorer scorer, Layer layer, LayerFigures figures, double tensile) {
    Material material = scorer.context().material(layer);
    return List.of(
        material.name(),
        1000 * figures.gaugeMm(),
        figures.modulus(),
        100 * figures.modulus() * figures.gaugeMm() / tensile,
        scorer.context().property(layer, Inputs.CONDUCTIVITY),
        scorer.context().property(layer, Inputs.HEAT_CAPACITY),
        1e6 * figures.resistance(),
        figures.capacity(),
        sources(material));
  }

  private static String sources(Material material) {
    Set<String> sources = new LinkedHashSet<>();
    for (String id : READ) {
      material.property(id).ifPresent(p -> sources.add(id + ": " + p.points().get(0).source()));
    }
    return String.join("; ", sources);
  }
}
