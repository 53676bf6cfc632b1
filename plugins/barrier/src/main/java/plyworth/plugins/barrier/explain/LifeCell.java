package plyworth.plugins.barrier.explain;

import plyworth.plugins.barrier.course.Life;

/** How a life stands in a table: days, more than days, or never. */
final class LifeCell {

  private LifeCell() {}

  /** A life in times of the days asked for. */
  static Life times(Life life, double days) {
    return new Life(life.days() / days, life.reached());
  }

  /** The days, as a number where the limit is reached, else in words. */
  static Object orNever(Life life) {
    if (life.reached() || Double.isNaN(life.days())) {
      return life.days();
    }
    return Double.isInfinite(life.days()) ? "word.never" : "> " + Math.round(life.days());
  }
}
