package plyworth.workbench.analysis;

import java.util.List;
import java.util.function.BooleanSupplier;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.TooManyCandidatesException;
import plyworth.workbench.engine.graph.CandidateGraph;
import plyworth.workbench.engine.graph.OptionFlows;

/**
 * What a study offers, counted before anything is scored.
 *
 * @param study the study
 * @param graph its candidates
 * @param flows how they run through its options
 * @param obstacles rules that alone leave no candidate; empty where there are candidates
 */
public record Offer(
    Study study, CandidateGraph graph, OptionFlows flows, List<EmptyOffer.Obstacle> obstacles) {

  /**
   * Counts.
   *
   * @param cancelled asked now and then; true gives up
   * @throws TooManyCandidatesException when there are too many to number
   * @throws java.util.concurrent.CancellationException when cancelled
   */
  public static Offer of(Study study, BooleanSupplier cancelled) {
    CandidateGraph graph =
        CandidateGraph.of(
            study.positions(),
            study.rules(),
            study.materialsAtHand(),
            study.processesAtHand(),
            cancelled);
    graph.compile();
    boolean none = graph.count().signum() == 0;
    return new Offer(
        study,
        graph,
        graph.flows(OptionFlows.EVERY),
        none ? EmptyOffer.obstacles(study) : List.of());
  }

  /** Whether another study offers the same. */
  public boolean isOf(Study other) {
    return study.positions().equals(other.positions())
        && study.rules().equals(other.rules())
        && study.materials().equals(other.materials())
        && study.processes().equals(other.processes());
  }
}
