package plyworth.workbench.robustness;

import java.util.List;
import java.util.Map;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.ValueModel;

/**
 * Possible worlds: one draw of every uncertain input binds all plugins, so that structures that
 * share a layer share its figures, and a lead that they share is not lost in noise.
 *
 * @param prepared the study and its plugins
 * @param model value functions and limits
 * @param structures the structures to score
 */
record Worlds(Prepared prepared, ValueModel model, List<Structure> structures) {

  /**
   * The values in one world, structure by criterion, the unknown as 0; null for a structure that is
   * blocked there, excluded by a limit, or cannot be judged.
   */
  double[][] values(long seed) {
    BoundPlugins bound = BoundPlugins.bind(prepared.catalog(), prepared.study(), Draw.random(seed));
    return structures.stream().map(s -> values(bound, s)).toArray(double[][]::new);
  }

  private double[] values(BoundPlugins bound, Structure structure) {
    Map<String, Assessment> assessments = bound.score(structure);
    double[] figures = bound.figures(assessments);
    boolean blocked = assessments.values().stream().anyMatch(Assessment::blocked);
    if (model.group(figures, blocked) != Group.RANKED) {
      return null;
    }
    return model.value(figures).parts().stream().mapToDouble(Valuation.Part::valueLow).toArray();
  }
}
