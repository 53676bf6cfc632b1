package plyworth.plugins.barrier.explain;

import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.course.OxygenBalance;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.scoring.Text;

/** What is said of a product that is at its limit, or beyond it, when it is filled. */
final class AtOnce {

  private AtOnce() {}

  /**
   * The sentence: the days asked for, what is there when filled, the limit, how far beyond it.
   *
   * @param key first part of its key
   */
  static Text text(String key, BarrierModel model, Mechanism mechanism) {
    double days = model.demand().days();
    String word = key + "at-once." + mechanism.word();
    if (mechanism.balance() instanceof OxygenBalance oxygen) {
      double filled = oxygen.headspace().startCm3();
      double allowed = oxygen.allowedCm3();
      return Text.of(word, days, filled, allowed, filled - allowed);
    }
    return mechanism.permeant() == Permeant.WATER
        ? moisture(word, days, model)
        : Text.of(word, days);
  }

  private static Text moisture(String word, double days, BarrierModel model) {
    MoistureLimit limit = model.context().brief().product().moisture().orElseThrow();
    double celsius = model.climates().seasons().climate().temperatureC();
    boolean drying = limit.spoiltBy() == MoistureLimit.Way.DRYING;
    return Text.of(
        word + (drying ? ".drying" : ""),
        days,
        limit.initialActivity(),
        limit.limitingActivity(celsius),
        limit.beyondBy(celsius));
  }
}
