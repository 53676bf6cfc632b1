package plyworth.workbench.robustness.turn;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import plyworth.workbench.engine.table.Progress;

/**
 * Every input that alone can turn the lead of a structure over another.
 *
 * @param turning those that can, the smallest relative change first
 * @param others those that cannot, the nearest first
 * @param complete whether all were tried; otherwise it was cancelled
 */
public record Sweep(List<Turns> turning, List<Turns> others, boolean complete) {

  /** Copies the lists. */
  public Sweep {
    turning = List.copyOf(turning);
    others = List.copyOf(others);
  }

  /**
   * Tries inputs one by one.
   *
   * @param duel the structure that leads at present, before the other
   * @param progress told how many are tried; may cancel
   */
  public static Sweep of(Duel duel, World world, List<Input> inputs, Progress progress) {
    List<Input> movable = inputs.stream().filter(TurnSearch::movable).toList();
    AtomicInteger tried = new AtomicInteger();
    List<Turns> all =
        movable.parallelStream()
            .filter(input -> !progress.cancelled())
            .map(
                input -> {
                  Turns turns = TurnSearch.of(duel, world, input, true);
                  progress.scored(tried.incrementAndGet(), movable.size());
                  return turns;
                })
            .toList();
    return new Sweep(
        sorted(all, true, Turns::change),
        sorted(all, false, Turns::closestLead),
        all.size() == movable.size());
  }

  private static List<Turns> sorted(
      List<Turns> all, boolean turning, ToDoubleFunction<Turns> first) {
    return all.stream()
        .filter(turns -> turns.nearest().isPresent() == turning)
        .sorted(Comparator.comparingDouble(first).thenComparing(turns -> turns.input().name()))
        .toList();
  }
}
