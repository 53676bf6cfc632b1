package plyworth.plugins.barrier.course;

import java.util.List;
import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;

/** Climates, packs and products to follow over time. */
public final class Courses {

  /** The dry food of the worked cases: b = 0.10, 20 g dry, from 0.02 to 0.05 g/g. */
  public static final MoistureLimit DRY_FOOD =
      new MoistureLimit(new Isotherm.Linear(0.10), 20, 0.2, 0.5);

  static final Isotherm SKIM_MILK = new Isotherm.Gab(0.0616, 31.4, 0.750);

  private Courses() {}

  public static Seasons constant(double celsius, double humidityPercent) {
    return new Seasons(new Climate("constant", celsius, humidityPercent), 3650);
  }

  public static Seasons seasons(Season... round) {
    return new Seasons(new Climate("seasons", List.of(round)), 3650);
  }

  public static Balance moisture(MoistureLimit limit, double headspaceCm3, Seasons seasons) {
    SeasonFactors factors = new SeasonFactors(seasons.each(s -> 1), seasons.each(s -> 1));
    return MoistureBalance.of(limit, headspaceCm3, seasons, factors);
  }

  /** A pack of one conductance, whatever passes and whatever the climate. */
  public static PackConductance pack(double conductance) {
    return (permeant, season, inside) -> conductance;
  }

  /** Days until the limit in such a pack. */
  public static double days(Balance balance, double conductance) {
    return balance.life(pack(conductance)).days();
  }
}
