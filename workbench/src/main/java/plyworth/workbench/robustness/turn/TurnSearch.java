package plyworth.workbench.robustness.turn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import plyworth.workbench.ranking.Valuation;

/**
 * Looks for the figures of one input at which the lead of a structure over another changes.
 *
 * <p>The lead is looked at in steps from the present figure outwards, on a ratio scale where
 * figures cannot be negative; wherever it changes between two steps, the figure is solved for by
 * Brent's method (Brent, Algorithms for Minimization without Derivatives, 1973; from memory). Two
 * changes between the same two steps go unseen. Where the lead is the same to the last digit at the
 * end, half way and at the present figure, nothing is looked for between. A figure that leaves more
 * unknown than at present counts as one at which nobody overtakes. A weight needs no search: the
 * lead is a line in it.
 */
public final class TurnSearch {

  /** Steps on each side of the present figure. */
  private static final int STEPS = 24;

  /** The same where the nearest turn alone is looked for. */
  private static final int FEWER_STEPS = 12;

  /** How far a figure is moved where no bound is nearer. */
  private static final double FARTHEST = 1000;

  private static final double RELATIVE = 1e-12;
  private static final double ABSOLUTE = 1e-12;
  private static final int MOST_TRIES = 200;

  /** Leads that differ by less come from rounding. */
  private static final double ROUNDING = 1e-12;

  /** A lead that is left at a turn and larger than this was jumped over. */
  private static final double LEVEL = 1e-6;

  private final Duel duel;
  private final World world;
  private final Input input;
  private final boolean ratios;
  private final double from;
  private final double to;
  private final List<Turn> turns = new ArrayList<>();
  private double closest;
  private double closestLead;
  private int points;
  private long unknown;

  private TurnSearch(Duel duel, World world, Input input) {
    this.duel = duel;
    this.world = world;
    this.input = input;
    double present = input.present();
    ratios = hasRatios(input) && input.kind() != Input.Kind.WEIGHT;
    double lowest = ratios ? present / FARTHEST : input.lowest();
    double highest = ratios ? present * FARTHEST : input.highest();
    from = Math.min(present, Math.max(input.lowest(), lowest));
    to = Math.max(present, Math.min(input.highest(), highest));
  }

  /**
   * The turns of one input.
   *
   * @param duel the structure that leads at present, before the other
   * @param world the present
   * @param input one that is {@link #movable}
   * @param nearestOnly whether to stop on each side at the first turn
   */
  public static Turns of(Duel duel, World world, Input input, boolean nearestOnly) {
    return new TurnSearch(duel, world, input).run(nearestOnly);
  }

  /** Whether it can be moved at all: in ratios, or between bounds. */
  public static boolean movable(Input input) {
    return hasRatios(input)
        || Double.isFinite(input.present())
            && Double.isFinite(input.lowest())
            && Double.isFinite(input.highest());
  }

  private static boolean hasRatios(Input input) {
    boolean bounded = Double.isFinite(input.lowest());
    return input.present() > 0 && (input.lowest() >= 0 || !bounded);
  }

  private Turns run(boolean nearestOnly) {
    Duel.Bout now = duel.in(world);
    closest = input.present();
    closestLead = now.lead();
    if (input.kind() == Input.Kind.WEIGHT) {
      weigh(now);
    } else {
      unknown = now.unknown();
      walk(from, now.lead(), nearestOnly);
      walk(to, now.lead(), nearestOnly);
    }
    turns.sort(Comparator.comparingDouble(Turn::figure));
    return new Turns(input, turns, closest, closestLead, from, to, points);
  }

  private void walk(double end, double leadNow, boolean nearestOnly) {
    double start = place(input.present());
    double length = place(end) - start;
    if (length == 0 || lead(start + length) == leadNow && lead(start + length / 2) == leadNow) {
      points += length == 0 ? 0 : 2;
      return;
    }
    int steps = nearestOnly ? FEWER_STEPS : STEPS;
    double before = start;
    double leadBefore = leadNow;
    for (int step = 1; step <= steps; step++) {
      double at = start + length * step / steps;
      double lead = lead(at);
      points++;
      see(figure(at), lead);
      if (lead < 0 != leadBefore < 0) {
        turns.add(solved(before, at, lead < 0));
        if (nearestOnly) {
          return;
        }
      }
      before = at;
      leadBefore = lead;
    }
  }

  private void see(double figure, double lead) {
    if (lead < closestLead) {
      closest = figure;
      closestLead = lead;
    }
  }

  private Turn solved(double before, double at, boolean overtakes) {
    double place =
        new BrentSolver(RELATIVE, ABSOLUTE)
            .solve(MOST_TRIES, this::lead, Math.min(before, at), Math.max(before, at));
    return new Turn(figure(place), overtakes, Math.abs(lead(place)) > LEVEL);
  }

  /** The lead at a place of the scale; where neither is ranked, the one behind does not lead. */
  private double lead(double place) {
    double lead = duel.lead(input.in(world, figure(place)), unknown);
    return Double.isNaN(lead) ? Duel.OUT : lead;
  }

  private double place(double figure) {
    return ratios ? Math.log(figure) : figure;
  }

  private double figure(double place) {
    return ratios ? Math.min(to, Math.max(from, Math.exp(place))) : place;
  }

  /**
   * With the share of one weight at t and the others at (1 − t)/(1 − w) times what they are, the
   * lead is t dv + (1 − t) du: dv on this criterion alone, du on the others alone. It is level at t
   * = −du / (dv − du).
   */
  private void weigh(Duel.Bout now) {
    if (now.one().isEmpty() || now.other().isEmpty()) {
      return;
    }
    double weight = input.present();
    String criterion = input.name().substring(Input.WEIGHT_OF.length());
    int index = now.model().indexOf(criterion).orElseThrow();
    Valuation.Part one = now.one().get().parts().get(index);
    Valuation.Part other = now.other().get().parts().get(index);
    double onThis = one.valueLow() - other.valueLow();
    double onOthers = (now.lead() - weight * onThis) / (1 - weight);
    double level = -onOthers / (onThis - onOthers);
    see(0, onOthers);
    see(1, onThis);
    if (onThis < -ROUNDING || onOthers < -ROUNDING) {
      turns.add(new Turn(level, true, false));
    }
  }
}
