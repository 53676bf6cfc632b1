package plyworth.workbench.robustness.turn;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What an input, changed alone, does to the lead of one structure over another.
 *
 * @param input the input
 * @param turns the figures at which the lead changes, ascending; none when no figure looked at does
 * @param closest the figure looked at where the lead is the smallest
 * @param closestLead the lead there; {@link Duel#OUT} where the one behind is not ranked anywhere
 * @param from lowest figure looked at
 * @param to highest figure looked at
 * @param points number of figures looked at; 0 where the turn is in closed form
 */
public record Turns(
    Input input,
    List<Turn> turns,
    double closest,
    double closestLead,
    double from,
    double to,
    int points) {

  private static final double JUST_BEYOND = 1e-6;
  private static final double TINY = 1e-9;

  /** Copies the list. */
  public Turns {
    turns = List.copyOf(turns);
  }

  /** The turn next to the present figure at which the one behind overtakes. */
  public Optional<Turn> nearest() {
    return turns.stream()
        .filter(Turn::overtakes)
        .min(
            Comparator.comparingDouble((Turn turn) -> turn.change(input.present()))
                .thenComparingDouble(turn -> Math.abs(turn.figure() - input.present())));
  }

  /** A figure just beyond a turn, seen from the present figure. */
  public double beyond(Turn turn) {
    double onwards = Math.signum(turn.figure() - input.present());
    double figure = turn.figure() + onwards * JUST_BEYOND * Math.max(Math.abs(turn.figure()), TINY);
    return Math.min(to, Math.max(from, figure));
  }

  /** The relative change that the nearest turn takes; infinite without one. */
  double change() {
    return nearest().map(turn -> turn.change(input.present())).orElse(Double.POSITIVE_INFINITY);
  }
}
