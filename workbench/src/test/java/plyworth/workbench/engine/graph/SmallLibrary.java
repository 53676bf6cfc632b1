package plyworth.workbench.engine.graph;

import java.util.List;
import java.util.Map;
import java.util.Set;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/** A handful of materials and processes, made up for tests on graphs. */
final class SmallLibrary {

  static final Layer INK = Layer.grams("ink", 1.5, "flexo");
  static final Layer VARNISH = Layer.grams("varnish", 1, "flexo");
  static final Layer PRIMER = Layer.grams("primer", 0.5, "priming");
  static final Layer PAPER = Layer.web("paper", 60);
  static final Layer FOIL = Layer.web("foil", 7);
  static final Layer FILM = Layer.web("resin", 30);
  static final Layer TIE = Layer.gauge("resin", 12, "melt-bond");
  static final Layer GLUE = Layer.grams("glue", 2, "glue-bond");
  static final Layer SKIN = Layer.gauge("resin", 8, "in-one-die");
  static final Layer COAT = Layer.gauge("resin", 20, "melt-coat");

  static final List<Layer> LAYERS =
      List.of(INK, VARNISH, PRIMER, PAPER, FOIL, FILM, TIE, GLUE, SKIN, COAT);

  private static final Property DENSITY =
      new Property(
          "density",
          "kg/m3",
          List.of(new Sourced(Double.NaN, Range.exactly(1000), SourceKind.JUDGEMENT, "test")));

  static final MaterialLibrary MATERIALS =
      MaterialLibrary.of(
          List.of(
              material("paper", "fibre", "web", "porous"),
              material("foil", "metal", "web", "dense"),
              material("resin", "plastic", "web", "film", "sealable", "dense"),
              material("glue", "adhesive", "sticky"),
              material("ink", "ink", "coloured"),
              material("varnish", "lacquer", "clear"),
              material("primer", "lacquer", "clear", "sticky")));

  static final ProcessLibrary PROCESSES =
      new ProcessLibrary(Map.of())
          .with(
              List.of(
                  process("flexo", ProcessRole.PRINT),
                  process("priming", ProcessRole.COATING),
                  process("melt-coat", ProcessRole.COATING),
                  process("melt-bond", ProcessRole.BOND),
                  process("glue-bond", ProcessRole.BOND),
                  process("in-one-die", ProcessRole.WEB_PART)));

  private SmallLibrary() {}

  static CandidateGraph graph(List<Position> positions, NeighbourRule... rules) {
    return CandidateGraph.of(positions, List.of(rules), MATERIALS, PROCESSES);
  }

  static Position position(String title, Option... options) {
    return new Position(title, List.of(options));
  }

  static Option only(Layer... layers) {
    return Option.of(layers);
  }

  private static Material material(String id, String family, String... kinds) {
    return new Material(
        id, id, family, Set.of(kinds), "test", List.of(), Map.of("density", DENSITY), "");
  }

  private static Process process(String id, ProcessRole role) {
    return new Process(id, id, role, Map.of(), "");
  }
}
