package plyworth.plugins.barrier.climate;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;

/**
 * A climate over time, looked ahead into for some days; packs are filled when its first season
 * begins, and its round of seasons starts over when it is through.
 */
public final class Seasons {

  private final Climate climate;
  private final double horizonDays;
  private final boolean constant;
  private final List<Season> round;
  private final double[] lengths;
  private final double roundDays;

  /**
   * A climate over time.
   *
   * @param horizonDays how far it is looked ahead, days
   */
  public Seasons(Climate climate, double horizonDays) {
    this.climate = climate;
    this.horizonDays = horizonDays;
    this.constant = climate.constant();
    this.round = constant ? climate.seasons().subList(0, 1) : climate.seasons();
    this.lengths = constant ? new double[] {Double.POSITIVE_INFINITY} : each(Season::days);
    this.roundDays = Arrays.stream(lengths).sum();
  }

  /** What happens in one spell of constant climate. */
  @FunctionalInterface
  public interface Spell {
    /**
     * Goes through a spell.
     *
     * @param season index in {@link Climate#seasons}
     * @param from first day
     * @param to last day
     * @return whether to go on
     */
    boolean pass(int season, double from, double to);
  }

  /** The climate. */
  public Climate climate() {
    return climate;
  }

  /** How far it is looked ahead, days. */
  public double horizonDays() {
    return horizonDays;
  }

  /** Whether it never changes. */
  public boolean constant() {
    return constant;
  }

  /** The seasons of one round; of a constant climate a single one. */
  public List<Season> round() {
    return round;
  }

  /** A figure of every season. */
  public double[] each(ToDoubleFunction<Season> figure) {
    return round.stream().mapToDouble(figure).toArray();
  }

  /** Goes through the spells from filling up to a day. */
  public void walk(double until, Spell spell) {
    double from = 0;
    boolean on = true;
    for (int season = 0; on && from < until; season = (season + 1) % lengths.length) {
      double to = Math.min(until, from + lengths[season]);
      on = spell.pass(season, from, to);
      from = to;
    }
  }

  /** Index of the season that a day falls into. */
  public int on(double day) {
    double left = day % roundDays;
    int season = 0;
    while (season < lengths.length - 1 && left > lengths[season]) {
      left -= lengths[season];
      season++;
    }
    return season;
  }

  /**
   * The day on which an amount has built up that grows at a rate of its own in every season;
   * infinite when it never does. Never falls when the amount or the start grows, or a rate falls.
   *
   * @param from day on which it begins to grow
   * @param rates amount per day in each season, none negative
   * @param amount what is to build up
   */
  public double until(double from, double[] rates, double amount) {
    if (amount <= 0) {
      return from;
    }
    if (constant) {
      return from + amount / rates[0];
    }
    double begun = Math.floor(from / roundDays) * roundDays;
    double perRound = built(roundDays, rates);
    double target = built(from - begun, rates) + amount;
    if (perRound == 0 || Double.isInfinite(target)) {
      return Double.POSITIVE_INFINITY;
    }
    double rounds = Math.max(0, Math.ceil(target / perRound) - 1);
    return Math.max(from, begun + rounds * roundDays + within(rates, target - rounds * perRound));
  }

  private double built(double days, double[] rates) {
    double sum = 0;
    double left = days;
    for (int s = 0; s < rates.length && left > 0; s++) {
      sum += rates[s] * Math.min(left, lengths[s]);
      left -= lengths[s];
    }
    return sum;
  }

  private double within(double[] rates, double amount) {
    double day = 0;
    double left = amount;
    for (int s = 0; s < rates.length; s++) {
      if (rates[s] > 0 && left <= rates[s] * lengths[s]) {
        return day + left / rates[s];
      }
      left -= rates[s] * lengths[s];
      day += lengths[s];
    }
    return Double.isNaN(left) ? Double.NaN : day;
  }
}
