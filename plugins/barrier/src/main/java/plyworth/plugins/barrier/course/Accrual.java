package plyworth.plugins.barrier.course;

import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Climate.Season;

/**
 * Something that builds up at a rate that depends on the season alone, conductance times a driving
 * force, until nothing more is allowed: oxygen that is consumed as it enters, water on crystals
 * that dissolve, alcohol over a liquid that keeps its strength (standard balance; analytic). A
 * season without a driving force adds nothing and takes nothing back.
 *
 * @param permeant what passes
 * @param unit unit of the amounts shown, plain spelling
 * @param shown amounts shown per amount that passes
 * @param start what is there when filled, in amounts that pass
 * @param limit what may be there at most, in amounts that pass
 * @param drives driving force in each season, none negative
 * @param inside water activity inside, which the pack's layers see
 * @param seasons the climate
 * @param enclosure of its days
 */
record Accrual(
    Permeant permeant,
    String unit,
    double shown,
    double start,
    double limit,
    double[] drives,
    double inside,
    Seasons seasons,
    Enclosure enclosure)
    implements Balance {

  /** Stands for an infinite conductance, so that no force times it is still nothing. */
  static final double WIDE_OPEN = 1e200;

  /** An accrual; factors say how conductance may change from season to season. */
  static Accrual of(
      Permeant permeant,
      String unit,
      double shown,
      double start,
      double limit,
      double[] drives,
      double inside,
      Seasons seasons,
      SeasonFactors factors) {
    double allowed = Math.max(0, limit - start);
    Enclosure enclosure =
        seasons.constant()
            ? Enclosure.constant(seasons, allowed == 0 ? 0 : allowed / drives[0])
            : new Enclosure(
                seasons,
                new double[] {allowed},
                new double[][] {times(drives, factors.highest())},
                new double[][] {times(drives, factors.lowest())});
    return new Accrual(permeant, unit, shown, start, limit, drives, inside, seasons, enclosure);
  }

  private static double[] times(double[] drives, double[] factors) {
    double[] product = new double[drives.length];
    for (int s = 0; s < drives.length; s++) {
      product[s] = drives[s] * factors[s];
    }
    return product;
  }

  @Override
  public double atLeast(double conductance) {
    return enclosure.atLeast(conductance);
  }

  @Override
  public double atMost(double conductance) {
    return enclosure.atMost(conductance);
  }

  @Override
  public double allowance() {
    return enclosure.allowance();
  }

  @Override
  public Life life(PackConductance pack) {
    return seasons.constant()
        ? Life.of(enclosure.atMost(conductance(pack, seasons.round().get(0))))
        : Life.of(seasons.until(0, rates(pack), Math.max(0, limit - start)));
  }

  private double[] rates(PackConductance pack) {
    return times(drives, seasons.each(season -> conductance(pack, season)));
  }

  private double conductance(PackConductance pack, Season season) {
    return Math.min(pack.at(permeant, season, inside), WIDE_OPEN);
  }

  @Override
  public Course course(PackConductance pack, double days) {
    double[] rates = rates(pack);
    Course.Track track = new Course.Track();
    track.add(0, shown * start);
    double[] amount = {start};
    seasons.walk(
        days,
        (season, from, to) -> {
          amount[0] += rates[season] * (to - from);
          track.add(to, shown * amount[0]);
          return true;
        });
    return track.course(unit, shown * limit);
  }

  @Override
  public double rateAtFirst(double conductance) {
    double most = 0;
    for (double drive : drives) {
      most = Math.max(most, drive);
    }
    return conductance * most;
  }

  @Override
  public boolean canLimit() {
    return atOnce() || Double.isNaN(rateAtFirst(1)) || rateAtFirst(1) > 0;
  }

  @Override
  public boolean atOnce() {
    return start >= limit;
  }
}
