package plyworth.workbench.analysis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.graph.CandidateGraph;

/** Finds out why a study has no candidate at all. */
public final class EmptyOffer {

  /**
   * A rule that alone stands between the study and its candidates.
   *
   * @param index place of the rule in the study
   * @param rule the rule
   * @param candidates candidates there would be without it
   */
  public record Obstacle(int index, NeighbourRule rule, BigInteger candidates) {}

  private EmptyOffer() {}

  /** The rules without any one of which there would be candidates, that with the most first. */
  public static List<Obstacle> obstacles(Study study) {
    List<Obstacle> found = new ArrayList<>();
    for (int i = 0; i < study.rules().size(); i++) {
      List<NeighbourRule> others = new ArrayList<>(study.rules());
      NeighbourRule left = others.remove(i);
      BigInteger candidates = count(study, others);
      if (candidates.signum() > 0) {
        found.add(new Obstacle(i, left, candidates));
      }
    }
    found.sort((a, b) -> b.candidates().compareTo(a.candidates()));
    return found;
  }

  private static BigInteger count(Study study, List<NeighbourRule> rules) {
    return CandidateGraph.of(
            study.positions(), rules, study.materialsAtHand(), study.processesAtHand())
        .outside()
        .completions();
  }
}
