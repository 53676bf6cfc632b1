package plyworth.plugins.barrier.course;

import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.Arrhenius;
import plyworth.shared.brief.Climate.Season;

/**
 * Oxygen in the head-space of a pack: dn/dt = G·(p − n/κ) − r·n, with κ the gas the head-space
 * holds per bar and r the uptake of the product; both limit cases are those of the standard
 * balance: nothing is consumed (r = 0) and all is consumed at once (r infinite). Solved in closed
 * form within each season; what is in the head-space carries over to the next.
 *
 * @param startCm3 oxygen sealed in, cm³ at 0 °C and 1.01325 bar
 * @param capacities κ in each season, cm³/bar
 * @param uptakePerDay r, share of the oxygen in the head-space, 1/day
 * @param seasons the climate
 */
public record HeadspaceOxygen(
    double startCm3, double[] capacities, double uptakePerDay, Seasons seasons) {

  private static final double ATMOSPHERE_BAR = 1.01325;

  private static final int BISECTIONS = 60;

  /** Points drawn in each spell. */
  private static final int POINTS = 24;

  /**
   * A head-space filled at 1 atm in the first season.
   *
   * @param cm3 its volume
   * @param share oxygen in it by volume, 0 to 1
   * @param halfLifeDays days in which the product takes up half of it; 0 for at once
   */
  static HeadspaceOxygen of(double cm3, double share, double halfLifeDays, Seasons seasons) {
    double[] capacities = seasons.each(season -> cm3 * perBar(season));
    double start = capacities[0] * share * ATMOSPHERE_BAR;
    double uptake =
        cm3 == 0 || halfLifeDays == 0 ? Double.POSITIVE_INFINITY : Math.log(2) / halfLifeDays;
    return new HeadspaceOxygen(start, capacities, uptake, seasons);
  }

  /** Gas in a volume per bar, cm³ at 0 °C and 1.01325 bar: (273.15 / T) / 1.01325. */
  private static double perBar(Season season) {
    return Arrhenius.ZERO_C / (season.temperatureC() + Arrhenius.ZERO_C) / ATMOSPHERE_BAR;
  }

  /** Whether the product takes up all oxygen at once. */
  public boolean atOnce() {
    return Double.isInfinite(uptakePerDay);
  }

  /** Whether there is a head-space at all. */
  public boolean holdsGas() {
    return capacities[0] > 0;
  }

  /** The same head-space over a product that takes up nothing. */
  public HeadspaceOxygen untouched() {
    return new HeadspaceOxygen(startCm3, capacities, 0, seasons);
  }

  /**
   * Oxygen at some time: in the head-space, and taken up by the product, cm³.
   *
   * @param gas in the head-space
   * @param uptake taken up since filling
   */
  record State(double gas, double uptake) {}

  /** The state after some days in one season. */
  State after(State from, int season, double conductance, double days) {
    double decay = conductance / capacities[season] + uptakePerDay;
    if (decay == 0) {
      return from;
    }
    double settled = conductance * OxygenBalance.AIR_BAR / decay;
    double gone = -Math.expm1(-decay * days);
    double gas = from.gas() + (settled - from.gas()) * gone;
    double held = settled * days + (from.gas() - settled) * gone / decay;
    return new State(gas, from.uptake() + uptakePerDay * held);
  }

  /** Days until the product has taken up an amount, looked ahead as far as the seasons are. */
  Life life(double[] conductances, double allowedCm3) {
    State[] state = {new State(startCm3, 0)};
    double[] day = {Double.NaN};
    seasons.walk(
        seasons.horizonDays(),
        (season, from, to) -> {
          State end = after(state[0], season, conductances[season], to - from);
          if (end.uptake() >= allowedCm3) {
            day[0] = from + within(state[0], season, conductances[season], to - from, allowedCm3);
          }
          state[0] = end;
          return end.uptake() < allowedCm3;
        });
    if (Double.isNaN(state[0].uptake())) {
      return Life.of(Double.NaN);
    }
    return Double.isNaN(day[0]) ? Life.beyond(seasons.horizonDays()) : Life.of(day[0]);
  }

  private double within(
      State from, int season, double conductance, double days, double allowedCm3) {
    double low = 0;
    double high = days;
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      if (after(from, season, conductance, middle).uptake() < allowedCm3) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Oxygen taken up over time, cm³. */
  Course uptake(double[] conductances, double days, double allowedCm3) {
    Course.Track track = new Course.Track();
    follow(conductances, days, (day, state) -> track.add(day, state.uptake()));
    return track.course("cm3", allowedCm3);
  }

  /** Oxygen in the head-space over time, % of its volume at 1 atm. */
  public Course percent(double[] conductances, double days) {
    Course.Track track = new Course.Track();
    follow(
        conductances,
        days,
        (day, state) -> track.add(day, 100 * state.gas() / capacities[0] / ATMOSPHERE_BAR));
    return track.course("%", 100 * OxygenBalance.AIR_BAR / ATMOSPHERE_BAR);
  }

  @FunctionalInterface
  private interface Visitor {
    void at(double day, State state);
  }

  private void follow(double[] conductances, double days, Visitor visitor) {
    State[] state = {new State(startCm3, 0)};
    visitor.at(0, state[0]);
    seasons.walk(
        days,
        (season, from, to) -> {
          for (int i = 1; i <= POINTS; i++) {
            double day = from + (to - from) * i / POINTS;
            visitor.at(day, after(state[0], season, conductances[season], day - from));
          }
          state[0] = after(state[0], season, conductances[season], to - from);
          return true;
        });
  }
}
