package plyworth.plugins.barrier.course;

import java.util.List;
import java.util.Optional;
import plyworth.plugins.barrier.climate.BarrierClimates;
import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.Alcohol;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.VolatileContent;

/**
 * A volatile content that leaves its pack, and the water it is mixed with, through every season.
 *
 * @param liquid what is filled
 * @param seasons the climate
 * @param inside water activity inside at its wettest, which the pack's layers see
 * @param extremes alcohol that leaves per day and unit of conductance at the storage climate, at
 *     least and at most, whatever passes of water; each by season
 */
public record VolatileBalance(
    VolatileLiquid liquid, Seasons seasons, double inside, ActivityExtremes extremes)
    implements Balance {

  /** Points of a course in each season, or in all of a constant climate. */
  private static final int POINTS = 40;

  /** Relative error of the {@link MeanActivity}. */
  private static final double TABULATED = 1e-5;

  /**
   * The balance of the volatile content of a brief.
   *
   * @param before the balance in another world; a liquid that is the same is kept
   */
  static VolatileBalance of(
      VolatileContent content, BarrierClimates climates, Optional<VolatileBalance> before) {
    Seasons seasons = climates.seasons();
    VolatileLiquid liquid =
        before
            .map(VolatileBalance::liquid)
            .filter(known -> known.is(content, seasons))
            .orElseGet(() -> VolatileLiquid.of(content, seasons));
    SeasonFactors factors = SeasonFactors.of(climates, permeant(content));
    double allowed = content.allowedLossPercent() / 100;
    return new VolatileBalance(
        liquid,
        seasons,
        climates.climate().inside(),
        ActivityExtremes.of(liquid.courses(), allowed, factors));
  }

  /** What is filled. */
  public VolatileContent content() {
    return liquid.content();
  }

  /** The course of alcohol and water in each season; none when the substance is not known. */
  public List<VolatileCourse> courses() {
    return liquid.courses();
  }

  /** Mean activity until the allowed loss, where it is known and one figure serves. */
  private Optional<MeanActivity> mean() {
    return liquid.mean();
  }

  private static Permeant permeant(VolatileContent content) {
    return Alcohol.named(content.substance()).map(Alcohol::permeant).orElse(Permeant.ALCOHOL);
  }

  /** What passes through the layers. */
  public Permeant permeant() {
    return known() ? courses().get(0).mixture().alcohol().permeant() : permeant(content());
  }

  /** Whether the vapour of the substance is known. */
  boolean known() {
    return !courses().isEmpty();
  }

  /** Mass of the volatile part as filled, g. */
  public double chargeG() {
    return content().chargeG() * content().massFraction();
  }

  private double allowedG() {
    return content().allowedLossPercent() / 100 * chargeG();
  }

  @Override
  public boolean canLimit() {
    return content().allowedLossPercent() < 100;
  }

  @Override
  public boolean atOnce() {
    return content().allowedLossPercent() == 0;
  }

  @Override
  public double atLeast(double conductance) {
    return known() ? days(conductance, extremes.most()) : Double.NaN;
  }

  @Override
  public double atMost(double conductance) {
    return known() ? days(conductance, extremes.least()) : Double.NaN;
  }

  private double days(double conductance, double[] rates) {
    double allowed = allowedG();
    return allowed == 0
        ? 0
        : seasons.until(0, rates, allowed / Math.min(conductance, Accrual.WIDE_OPEN));
  }

  @Override
  public double atLeast(double conductance, double waterLow, double waterHigh) {
    if (mean().isEmpty() || waterLow != waterHigh && !mean().get().dries()) {
      return atLeast(conductance) + 0 * waterHigh;
    }
    double days = mean().get().days(allowedG(), conductance, waterHigh);
    return waterLow < waterHigh ? (1 - TABULATED) * days : days;
  }

  @Override
  public double atMost(double conductance, double waterLow, double waterHigh) {
    if (mean().isEmpty() || waterLow != waterHigh && !mean().get().dries()) {
      return atMost(conductance) + 0 * waterHigh;
    }
    double days = mean().get().days(allowedG(), conductance, waterLow);
    return waterLow < waterHigh ? (1 + TABULATED) * days : days;
  }

  /**
   * Whether the liquid gives off water in every season: then more water that leaves means a richer
   * liquid, and less time.
   */
  boolean dries() {
    return courses().stream().allMatch(VolatileCourse::dries);
  }

  @Override
  public Life life(PackConductance pack) {
    if (!known() || atOnce()) {
      return Life.of(known() ? 0 : Double.NaN);
    }
    if (mean().isPresent()) {
      Season season = seasons.round().get(0);
      return Life.of(mean().get().days(allowedG(), alcohol(pack, season), water(pack, season)));
    }
    return new VolatileWalk(this, pack).life(content().allowedLossPercent() / 100);
  }

  /** Conductance of a pack to the alcohol in a season. */
  double alcohol(PackConductance pack, Season season) {
    return Math.min(pack.at(permeant(), season, inside), Accrual.WIDE_OPEN);
  }

  /** Conductance of a pack to water in a season. */
  double water(PackConductance pack, Season season) {
    return pack.at(Permeant.WATER, season, inside);
  }

  @Override
  public Course course(PackConductance pack, double days) {
    Course.Track track = new Course.Track();
    if (known()) {
      new VolatileWalk(this, pack)
          .through(days, POINTS, (day, point) -> track.add(day, 100 * point.loss()));
    } else {
      track.add(0, Double.NaN);
    }
    return track.course("%", content().allowedLossPercent());
  }

  /** Loss after some days, % of the charge; NaN when unknown. */
  public double lossPercent(PackConductance pack, double days) {
    return known() ? 100 * new VolatileWalk(this, pack).after(days).loss() : Double.NaN;
  }

  @Override
  public double rateAtFirst(double conductance) {
    return known()
        ? conductance * courses().stream().mapToDouble(VolatileCourse::activity).max().orElseThrow()
        : Double.NaN;
  }
}
