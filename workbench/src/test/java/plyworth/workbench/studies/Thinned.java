package plyworth.workbench.studies;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;

/**
 * A study with fewer options: of those that differ in nothing that a rule can see, gauge above all,
 * the middle one is kept.
 */
final class Thinned {

  private Thinned() {}

  static Study of(Study study) {
    return study.withPositions(study.positions().stream().map(p -> thin(p, study)).toList());
  }

  private static Position thin(Position position, Study study) {
    Map<List<String>, List<Option>> alike = new LinkedHashMap<>();
    for (Option option : position.options()) {
      List<String> kinds = option.layers().stream().map(l -> kind(l, study)).toList();
      alike.computeIfAbsent(kinds, k -> new ArrayList<>()).add(option);
    }
    return new Position(
        position.title(), alike.values().stream().map(o -> o.get(o.size() / 2)).toList());
  }

  private static String kind(Layer layer, Study study) {
    return study.materialsAtHand().require(layer.material()).kinds() + layer.process();
  }
}
