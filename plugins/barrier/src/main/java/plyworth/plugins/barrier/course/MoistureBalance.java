package plyworth.plugins.barrier.course;

import java.util.Arrays;
import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;

/**
 * Water that a product takes up or gives off through its pack.
 *
 * <p>The product stays in equilibrium with the gas around it, so its water activity follows c(a)
 * da/dt = G·p0·(RH − a), with the pack's conductance G in g/(day·Pa) and c what product and
 * head-space hold (sorption balance of moisture-sensitive packs, from memory). In a constant
 * climate days are an integral over the isotherm; through seasons the equation is solved step by
 * step.
 *
 * @param sorption what product and head-space hold
 * @param seasons the climate
 * @param canLimit whether some season drives the product to its limit
 * @param enclosure of its days through seasons
 */
public record MoistureBalance(
    Sorption sorption, Seasons seasons, boolean canLimit, Enclosure enclosure) implements Balance {

  /** Pieces of the way that the enclosure knows; more make it tighter and dearer. */
  private static final int PIECES = 8;

  /** The balance of a product; crystals that dissolve accrue water above their point. */
  static Balance of(
      MoistureLimit limit, double headspaceCm3, Seasons seasons, SeasonFactors factors) {
    double celsius = seasons.climate().temperatureC();
    if (limit.isotherm(celsius) instanceof Isotherm.Deliquescent crystals) {
      return dissolving(limit, crystals, seasons, factors);
    }
    Sorption sorption = Sorption.of(limit, headspaceCm3, celsius);
    boolean atOnce = sorption.beyond();
    boolean driven =
        Arrays.stream(seasons.each(MoistureBalance::outside)).anyMatch(sorption::drives);
    return new MoistureBalance(
        sorption, seasons, atOnce || driven, enclosure(sorption, seasons, atOnce, factors));
  }

  /**
   * Drive p0·(RH − point) above the deliquescence point; the head-space is left out. What is filled
   * wetter than that has dissolved already.
   */
  private static Accrual dissolving(
      MoistureLimit limit, Isotherm.Deliquescent crystals, Seasons seasons, SeasonFactors factors) {
    double point = crystals.deliquescence();
    double allowed =
        limit.initialActivity() < point ? limit.dryMassG() * crystals.allowedUptake() : 0;
    return Accrual.of(
        Permeant.WATER,
        "g",
        1,
        0,
        allowed,
        seasons.each(season -> Math.max(0, saturated(season) * (outside(season) - point))),
        limit.initialActivity(),
        seasons,
        factors);
  }

  private static double saturated(Season season) {
    return SaturatedVapour.pascal(season.temperatureC());
  }

  private static double outside(Season season) {
    return season.humidityPercent() / 100;
  }

  /** Exposure relative to the season that lies farthest beyond the limit. */
  private static Enclosure enclosure(
      Sorption sorption, Seasons seasons, boolean atOnce, SeasonFactors factors) {
    double[] outside = seasons.each(MoistureBalance::outside);
    double way = sorption.way();
    double farthest = way * Arrays.stream(outside).map(rh -> way * rh).max().orElseThrow();
    if (atOnce || !sorption.drives(farthest)) {
      return Enclosure.constant(seasons, atOnce ? 0 : Double.POSITIVE_INFINITY);
    }
    double start = sorption.limit().initialActivity();
    double critical = sorption.limit().criticalActivity();
    return seasons.constant()
        ? Enclosure.constant(
            seasons,
            sorption.exposure(start, critical, farthest) / saturated(seasons.round().get(0)))
        : pieces(sorption, seasons, farthest, factors);
  }

  private static Enclosure pieces(
      Sorption sorption, Seasons seasons, double farthest, SeasonFactors factors) {
    double[] outside = seasons.each(MoistureBalance::outside);
    double[] saturated = seasons.each(MoistureBalance::saturated);
    boolean always = Arrays.stream(outside).allMatch(sorption::drives);
    double start = sorption.limit().initialActivity();
    double step = (sorption.limit().criticalActivity() - start) / PIECES;
    double[] pieces = new double[PIECES];
    double[][] most = new double[PIECES][outside.length];
    double[][] least = new double[always ? PIECES : 0][outside.length];
    for (int i = 0; i < PIECES; i++) {
      double from = start + i * step;
      double to = start + (i + 1) * step;
      pieces[i] = sorption.exposure(from, to, farthest);
      for (int s = 0; s < outside.length; s++) {
        double drive = Math.max(0, (outside[s] - from) / (farthest - from));
        most[i][s] = factors.highest()[s] * saturated[s] * drive;
        if (always) {
          least[i][s] = factors.lowest()[s] * saturated[s] * (outside[s] - to) / (farthest - to);
        }
      }
    }
    return new Enclosure(seasons, pieces, most, least);
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
    if (atOnce()) {
      return Life.of(0);
    }
    if (!canLimit) {
      return Life.of(Double.POSITIVE_INFINITY);
    }
    return seasons.constant()
        ? Life.of(constantDays(pack))
        : MoistureCourse.of(this, pack, seasons.horizonDays()).life();
  }

  private double constantDays(PackConductance pack) {
    Season season = seasons.round().get(0);
    SampledConductance conductance = sampled(pack, season);
    if (conductance.constant()) {
      return enclosure.atLeast(conductance.at(0));
    }
    double start = sorption.limit().initialActivity();
    double critical = sorption.limit().criticalActivity();
    return sorption.exposure(start, critical, outside(season), conductance) / saturated(season);
  }

  /** The conductance of a pack over the activities that the product can have. */
  SampledConductance sampled(PackConductance pack, Season season) {
    double start = sorption.limit().initialActivity();
    double critical = sorption.limit().criticalActivity();
    double low = Math.min(start, critical);
    double high = Math.max(start, critical);
    for (double outside : seasons.each(MoistureBalance::outside)) {
      low = sorption.way() > 0 ? Math.min(low, outside) : low;
      high = sorption.way() < 0 ? Math.max(high, outside) : high;
    }
    return SampledConductance.of(pack, season, low, high);
  }

  @Override
  public Course course(PackConductance pack, double days) {
    return MoistureCourse.of(this, pack, days).uptake();
  }

  @Override
  public double rateAtFirst(double conductance) {
    double start = sorption.limit().initialActivity();
    double most = 0;
    for (Season season : seasons.round()) {
      double drive = saturated(season) * (outside(season) - start);
      most = Math.abs(drive) > Math.abs(most) ? drive : most;
    }
    return conductance * most;
  }

  @Override
  public boolean atOnce() {
    return sorption.beyond();
  }
}
