package plyworth.plugins.barrier.course;

import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate.Season;

/**
 * Oxygen that is sealed into a pack and enters it, and that its product takes up.
 *
 * <p>The product takes up oxygen at a rate that goes with the oxygen in the head-space. At once,
 * and all that enters is consumed, the pressure difference is constant (standard balance;
 * analytic); that is the safe side. Slowly, and the head-space fills meanwhile.
 *
 * @param allowedCm3 oxygen the product may take up, cm³ at 0 °C and 1.01325 bar
 * @param headspace the head-space
 * @param consumed the balance of a product that takes up at once
 * @param factors how conductance may change from season to season
 */
public record OxygenBalance(
    double allowedCm3, HeadspaceOxygen headspace, Accrual consumed, SeasonFactors factors)
    implements Balance {

  /** Partial pressure of oxygen in air at 1 atm, bar. */
  public static final double AIR_BAR = 0.2095 * 1.01325;

  /** Mass of 1 cm³ of oxygen at 0 °C and 1.01325 bar, mg: 31.998 g / 22413.97 cm³. */
  static final double MG_PER_CM3 = 31.998e3 / 22413.97;

  /**
   * The balance of a brief that has an oxygen limit.
   *
   * @param halfLifeDays days in which the product takes up half the oxygen of a tight head-space; 0
   *     for at once
   * @param inside water activity inside, which the pack's layers see
   */
  static OxygenBalance of(
      Brief brief, double halfLifeDays, double inside, Seasons seasons, SeasonFactors factors) {
    var limit = brief.product().oxygen().orElseThrow();
    double allowed = limit.uptakePpm() * 1e-6 * brief.product().massG() * 1000 / MG_PER_CM3;
    HeadspaceOxygen headspace =
        HeadspaceOxygen.of(
            brief.pack().headspaceCm3(), limit.headspacePercent() / 100, halfLifeDays, seasons);
    Accrual consumed =
        Accrual.of(
            Permeant.OXYGEN,
            "cm3",
            1,
            headspace.startCm3(),
            allowed,
            seasons.each(season -> AIR_BAR),
            inside,
            seasons,
            factors);
    return new OxygenBalance(allowed, headspace, consumed, factors);
  }

  @Override
  public double atLeast(double conductance) {
    return headspace.atOnce()
        ? consumed.atLeast(conductance)
        : headspace.life(times(conductance, factors.highest()), allowedCm3).days();
  }

  @Override
  public double atMost(double conductance) {
    return headspace.atOnce()
        ? consumed.atMost(conductance)
        : headspace.life(times(conductance, factors.lowest()), allowedCm3).days();
  }

  @Override
  public double allowance() {
    return headspace.atOnce() ? consumed.allowance() : Double.NaN;
  }

  private static double[] times(double conductance, double[] factors) {
    double[] product = factors.clone();
    for (int s = 0; s < product.length; s++) {
      product[s] *= Math.min(conductance, Accrual.WIDE_OPEN);
    }
    return product;
  }

  @Override
  public Life life(PackConductance pack) {
    return headspace.atOnce()
        ? consumed.life(pack)
        : headspace.life(conductances(pack), allowedCm3);
  }

  /** Conductance of a pack in each season, cm³/(day·bar). */
  public double[] conductances(PackConductance pack) {
    return consumed.seasons().each(season -> conductance(pack, season));
  }

  private double conductance(PackConductance pack, Season season) {
    return Math.min(pack.at(Permeant.OXYGEN, season, consumed.inside()), Accrual.WIDE_OPEN);
  }

  @Override
  public Course course(PackConductance pack, double days) {
    return headspace.atOnce()
        ? consumed.course(pack, days)
        : headspace.uptake(conductances(pack), days, allowedCm3);
  }

  @Override
  public double rateAtFirst(double conductance) {
    return conductance * AIR_BAR;
  }

  @Override
  public boolean canLimit() {
    return true;
  }

  @Override
  public boolean atOnce() {
    return headspace.atOnce() && consumed.atOnce();
  }
}
