package plyworth.workbench.robustness.turn;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;

/**
 * Every input that alone can turn the lead of a structure over another.
 *
 * @param turning those that can, the smallest relative change first
 * @param others those that cannot, the nearest first
 * @param complete whether all were tried; otherwise it was cancelled
 */
public record Sweep(List<Turns> turning, List<Turns> others, boolean complete) {

  /** Watches the inputs being tried; called from several threads. */
  @FunctionalInterface
  public interface Watch {
    /** One more is tried; gives false to stop. */
    boolean goOn(int tried, int of);
  }

  /** Copies the lists. */
  public Sweep {
    turning = List.copyOf(turning);
    others = List.copyOf(others);
  }

  /**
   * Tries inputs one by one.
   *
   * @param duel the structure that leads at present, before the other
   */
  public static Sweep of(Duel duel, World world, List<Input> inputs, Watch watch) {
    List<Input> movable = inputs.stream().filter(TurnSearch::movable).toList();
    AtomicInteger tried = new AtomicInteger();
    AtomicBoolean cancelled = new AtomicBoolean();
    List<Turns> all =
        movable.parallelStream()
            .map(
                input -> {
                  if (cancelled.get()) {
                    return null;
                  }
                  Turns turns = TurnSearch.of(duel, world, input, true);
                  if (!watch.goOn(tried.incrementAndGet(), movable.size())) {
                    cancelled.set(true);
                  }
                  return turns;
                })
            .filter(Objects::nonNull)
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
