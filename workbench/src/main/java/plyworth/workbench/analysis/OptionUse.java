package plyworth.workbench.analysis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.graph.CandidateGraph;

/**
 * Whether candidates can be spelled with an option, and what keeps them from it.
 *
 * @param candidates how many can
 * @param obstacles the rules without any one of which some could, where none can; that with the
 *     most first
 */
public record OptionUse(BigInteger candidates, List<EmptyOffer.Obstacle> obstacles) {

  /** Copies the list. */
  public OptionUse {
    obstacles = List.copyOf(obstacles);
  }

  /** The use of one option of a position. */
  public static OptionUse of(Study study, int position, int option) {
    List<Position> narrowed = new ArrayList<>(study.positions());
    Position whole = narrowed.get(position);
    narrowed.set(position, new Position(whole.title(), List.of(whole.options().get(option))));
    Study alone = study.withPositions(narrowed);
    BigInteger candidates =
        CandidateGraph.of(
                alone.positions(), alone.rules(), alone.materialsAtHand(), alone.processesAtHand())
            .count();
    return new OptionUse(
        candidates, candidates.signum() == 0 ? EmptyOffer.obstacles(alone) : List.of());
  }
}
