package plyworth.workbench.desktop.position;

import java.util.List;
import plyworth.shared.material.Material;
import plyworth.shared.route.Process;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;

/** What of a study the parts that edit positions and options depend on; weights are not in it. */
record Offered(
    List<Position> positions,
    List<NeighbourRule> rules,
    List<Limit> limits,
    List<Material> materials,
    List<Process> processes,
    Results results) {

  static Offered by(Study study) {
    return new Offered(
        study.positions(),
        study.rules(),
        study.limits(),
        study.materials(),
        study.processes(),
        study.results());
  }
}
