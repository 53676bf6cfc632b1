package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import plyworth.shared.structure.Structure;

/**
 * How the order of the best kinds moved from one ranking to another. A kind keeps its place in the
 * story however its best gauges change.
 *
 * @param moves the best kinds of the later ranking, best first, then those that are not among them
 *     any more
 */
public record RankingMove(List<Move> moves) {

  /**
   * A kind and its places.
   *
   * @param structure its best structure in the later ranking; in the earlier one, where it is not
   *     among the best any more
   * @param before place among the best before, from 1; empty when it was not among them
   * @param now the same now
   * @param valueBefore value of its best before; NaN when it was not among the best
   * @param valueNow the same now
   */
  public record Move(
      Structure structure,
      OptionalInt before,
      OptionalInt now,
      double valueBefore,
      double valueNow) {

    /** Whether it was among the best and stands higher now. */
    public boolean rose() {
      return stayed() && now.getAsInt() < before.getAsInt();
    }

    /** Whether it is among the best and stands lower than before. */
    public boolean fell() {
      return stayed() && now.getAsInt() > before.getAsInt();
    }

    /** Whether it was not among the best before. */
    public boolean entered() {
      return before.isEmpty();
    }

    /** Whether it is not among the best any more. */
    public boolean left() {
      return now.isEmpty();
    }

    private boolean stayed() {
      return before.isPresent() && now.isPresent();
    }
  }

  /** The best of a kind, and what it is worth. */
  private record Best(StructureKind kind, Structure structure, double value) {}

  /** Copies the list. */
  public RankingMove {
    moves = List.copyOf(moves);
  }

  /**
   * The moves between two rankings.
   *
   * @param then the best of each kind before
   * @param later the same now
   */
  public static RankingMove between(Ranked before, BestList then, Ranked now, BestList later) {
    List<Best> earlier = best(before, then);
    List<Best> current = best(now, later);
    List<Move> moves = new ArrayList<>();
    for (int i = 0; i < current.size(); i++) {
      Best best = current.get(i);
      OptionalInt place = place(best.kind(), earlier);
      double value = place.isPresent() ? earlier.get(place.getAsInt() - 1).value() : Double.NaN;
      moves.add(new Move(best.structure(), place, OptionalInt.of(i + 1), value, best.value()));
    }
    for (int i = 0; i < earlier.size(); i++) {
      Best gone = earlier.get(i);
      if (place(gone.kind(), current).isEmpty()) {
        moves.add(
            new Move(
                gone.structure(),
                OptionalInt.of(i + 1),
                OptionalInt.empty(),
                gone.value(),
                Double.NaN));
      }
    }
    return new RankingMove(moves);
  }

  private static List<Best> best(Ranked ranked, BestList list) {
    StructureKinds kinds = ranked.kinds();
    return list.entries().stream()
        .map(entry -> entry.candidate())
        .map(
            candidate -> {
              Structure structure = ranked.structure(candidate.path());
              return new Best(kinds.of(structure), structure, candidate.value());
            })
        .toList();
  }

  private static OptionalInt place(StructureKind kind, List<Best> among) {
    return IntStream.range(0, among.size())
        .filter(i -> among.get(i).kind().equals(kind))
        .map(i -> i + 1)
        .findFirst();
  }

  /** How many rose. */
  public long risen() {
    return moves.stream().filter(Move::rose).count();
  }

  /** How many fell. */
  public long fallen() {
    return moves.stream().filter(Move::fell).count();
  }

  /** How many are among the best that were not. */
  public long entered() {
    return moves.stream().filter(Move::entered).count();
  }

  /** How many are not among the best any more. */
  public long left() {
    return moves.stream().filter(Move::left).count();
  }

  /** Whether every kind stands where it stood. */
  public boolean sameOrder() {
    return risen() + fallen() + entered() + left() == 0;
  }

  /** Whether another kind leads than before. */
  public boolean newLeader() {
    return !moves.isEmpty()
        && moves.get(0).now().isPresent()
        && moves.get(0).before().orElse(0) != 1;
  }
}
