package plyworth.workbench.studies;

import java.util.List;
import java.util.Map;
import plyworth.shared.brief.Brief;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;

/** A study with one thing changed. */
final class Altered {

  private Altered() {}

  static Study positions(Study study, List<Position> positions) {
    return altered(study, study.brief(), positions, study.settings());
  }

  static Study brief(Study study, Brief brief) {
    return altered(study, brief, study.positions(), study.settings());
  }

  static Study setting(Study study, String plugin, String setting, double figure) {
    return altered(
        study, study.brief(), study.positions(), Map.of(plugin, Map.of(setting, figure)));
  }

  private static Study altered(
      Study study,
      Brief brief,
      List<Position> positions,
      Map<String, Map<String, Double>> settings) {
    return new Study(
        study.title(),
        study.question(),
        brief,
        positions,
        study.rules(),
        study.baseline(),
        study.measurements(),
        study.weightings(),
        study.weighting(),
        study.valueFunctions(),
        study.limits(),
        settings,
        study.seed(),
        study.materials(),
        study.processes(),
        study.plant(),
        study.results(),
        study.remarks(),
        study.decision(),
        study.notes());
  }
}
