package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.table.Progress;

/**
 * What measuring did to a ranking.
 *
 * @param before the ranking as it would be without
 * @param after the ranking as it is
 */
public record ResultsEffect(Ranked before, Ranked after) {

  /** What is left out of the ranking before. */
  public enum Without {
    /** All that was measured. */
    ANYTHING,
    /** What laboratories found of materials and candidates. */
    RESULTS,
    /** What was measured on today's pack. */
    TODAY
  }

  /**
   * A structure among the best of one of the two.
   *
   * @param before its rank without; empty when it was not ranked, or ranks were not counted
   * @param after its rank now; empty likewise
   */
  public record Move(Structure structure, OptionalLong before, OptionalLong after) {}

  /**
   * Ranks again without what was measured.
   *
   * @param progress told how far it is; may cancel
   * @throws java.util.concurrent.CancellationException when cancelled
   */
  public static ResultsEffect of(Ranked after, Without without, Progress progress) {
    Prepared prepared =
        Prepared.of(
            without(after.study(), without), after.scored().compiled().prepared().catalog());
    Compiled compiled = Compiled.of(prepared, progress::cancelled);
    int listed = Math.max(1, after.best().size());
    Ranked before = Ranked.of(compiled, listed, Optional.empty(), progress);
    return new ResultsEffect(before, after);
  }

  private static Study without(Study study, Without what) {
    Study results = what == Without.TODAY ? study : study.with(Results.NONE);
    return what == Without.RESULTS ? results : results.withMeasurements(List.of());
  }

  /**
   * How the best moved: the best now, then those that were among the best before.
   *
   * @param depth how many of the best of each
   */
  public List<Move> moves(int depth) {
    Set<Structure> shown = new LinkedHashSet<>(best(after, depth));
    shown.addAll(best(before, depth));
    List<Move> moves = new ArrayList<>();
    for (Structure structure : shown) {
      moves.add(new Move(structure, rank(before, structure), rank(after, structure)));
    }
    return moves;
  }

  /** Whether another candidate leads than would without. */
  public boolean turnsTheLead() {
    return !best(before, 1).equals(best(after, 1));
  }

  private static List<Structure> best(Ranked ranked, int depth) {
    return ranked.best().stream().limit(depth).map(c -> ranked.structure(c.path())).toList();
  }

  private static OptionalLong rank(Ranked ranked, Structure structure) {
    List<Structure> listed = best(ranked, ranked.best().size());
    int place = listed.indexOf(structure);
    if (place >= 0) {
      return OptionalLong.of(place + 1);
    }
    OptionalLong path = ranked.scored().compiled().paths().pathOf(structure);
    return path.isPresent() && ranked.ranking().isCounted()
        ? ranked.ranking().rankOf(path.getAsLong())
        : OptionalLong.empty();
  }
}
