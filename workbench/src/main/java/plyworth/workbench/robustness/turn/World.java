package plyworth.workbench.robustness.turn;

import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.scoring.Draw;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * All inputs at one figure each.
 *
 * @param study brief, weights and settings
 * @param draw the figure of each property
 */
public record World(Study study, Draw draw) {

  /**
   * A study as it is, at its typical figures. Its weights become shares that add up to 1 over the
   * criteria that count, so that one can be moved against the others.
   *
   * @param model the value model of the study
   */
  public static World of(Study study, ValueModel model) {
    Map<String, Double> shares = new TreeMap<>();
    for (Weighed weighed : model.criteria()) {
      shares.put(weighed.criterion().id(), weighed.weight());
    }
    return new World(study.with(new Weighting(study.weighting(), shares)), Draw.TYPICAL);
  }
}
