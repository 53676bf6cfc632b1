package plyworth.plugins.barrier.course;

import java.util.List;
import java.util.Optional;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.Alcohol;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.VolatileContent;

/**
 * A volatile content with the water it is mixed with, in every season: what no layer matters to.
 *
 * @param content what is filled
 * @param round the seasons
 * @param courses the course of both in each season; none when the substance is not known
 * @param mean mean activity until the allowed loss; empty when unknown, when none or all may go,
 *     and where seasons change
 * @param losses losses over a fixed time; empty when unknown, and where seasons change
 */
record VolatileLiquid(
    VolatileContent content,
    List<Season> round,
    List<VolatileCourse> courses,
    Optional<MeanActivity> mean,
    Optional<LossTables> losses) {

  /** The liquid of a brief. */
  static VolatileLiquid of(VolatileContent content, Seasons seasons) {
    double water = (1 - content.massFraction()) / content.massFraction();
    List<VolatileCourse> courses =
        Alcohol.named(content.substance()).stream()
            .flatMap(a -> seasons.round().stream().map(s -> VolatileCourse.of(a, water, s)))
            .toList();
    double allowed = content.allowedLossPercent() / 100;
    Optional<VolatileCourse> only = courses.stream().filter(c -> seasons.constant()).findFirst();
    return new VolatileLiquid(
        content,
        seasons.round(),
        courses,
        only.filter(c -> allowed > 0 && allowed < 1).map(c -> new MeanActivity(c, allowed)),
        only.map(LossTables::new));
  }

  /** Whether it is that of a content in some seasons. */
  boolean is(VolatileContent other, Seasons seasons) {
    return content.equals(other) && round.equals(seasons.round());
  }
}
