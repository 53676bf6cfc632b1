package plyworth.plugins.barrier.course;

import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Climate.Season;

/** A volatile content followed through the seasons in one pack. */
public final class VolatileWalk {

  private final VolatileBalance balance;
  private final double[] alcohol;
  private final double[] ratio;

  /** The walk of a content through a pack, as of filling. */
  public VolatileWalk(VolatileBalance balance, PackConductance pack) {
    this.balance = balance;
    Seasons seasons = balance.seasons();
    alcohol = seasons.each(s -> balance.alcohol(pack, s) / balance.chargeG());
    ratio = seasons.each(s -> ratio(pack, s));
  }

  private double ratio(PackConductance pack, Season season) {
    double own = balance.alcohol(pack, season);
    double pascal = SaturatedVapour.pascal(season.temperatureC());
    return own == 0 ? 0 : balance.water(pack, season) * pascal / own;
  }

  /** Sees a moment. */
  @FunctionalInterface
  public interface Visitor {
    /** What is left on a day. */
    void see(double day, VolatileCourse.Point point);
  }

  /** What is left after some days. */
  VolatileCourse.Point after(double days) {
    VolatileCourse.Point[] last = new VolatileCourse.Point[1];
    through(days, 1, (day, point) -> last[0] = point);
    return last[0];
  }

  /** Follows the content up to a day, seen at the beginning and at some points of every season. */
  public void through(double days, int points, Visitor visitor) {
    VolatileCourse.Point[] now = {balance.courses().get(0).filled()};
    visitor.see(0, now[0]);
    balance
        .seasons()
        .walk(
            days,
            (season, from, to) -> {
              for (int i = 1; i <= points; i++) {
                double step = (to - from) / points;
                now[0] = onward(now[0], season, step);
                visitor.see(from + i * step, now[0]);
              }
              return true;
            });
  }

  private VolatileCourse.Point onward(VolatileCourse.Point from, int season, double days) {
    return balance.courses().get(season).onward(from, alcohol[season] * days, ratio[season]);
  }

  /** When a share of the alcohol has left, followed as far as the climate is looked ahead. */
  Life life(double loss) {
    VolatileCourse.Point[] now = {balance.courses().get(0).filled()};
    double[] day = {Double.POSITIVE_INFINITY};
    double horizon = balance.seasons().horizonDays();
    balance
        .seasons()
        .walk(
            horizon,
            (season, from, to) -> {
              VolatileCourse.Point end = onward(now[0], season, to - from);
              if (!(end.loss() < loss)) {
                VolatileCourse.Point there =
                    balance.courses().get(season).until(now[0], loss, ratio[season]);
                day[0] = from + (there.exposure() - now[0].exposure()) / alcohol[season];
                return false;
              }
              now[0] = end;
              return true;
            });
    return day[0] <= horizon || Double.isNaN(day[0]) ? Life.of(day[0]) : Life.beyond(horizon);
  }
}
