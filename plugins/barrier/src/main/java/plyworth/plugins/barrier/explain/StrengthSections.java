package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.course.VolatileBalance;
import plyworth.plugins.barrier.course.VolatileCourse;
import plyworth.plugins.barrier.course.VolatileWalk;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Text;

/** What is left of an alcohol and of its water, and what the loss of weight does not show. */
final class StrengthSections {

  private static final int POINTS = 40;

  private final VolatileBalance balance;
  private final List<Double> days = new ArrayList<>();
  private final List<Double> alcohol = new ArrayList<>();
  private final List<Double> water = new ArrayList<>();
  private VolatileCourse.Point end;

  private StrengthSections(VolatileBalance balance) {
    this.balance = balance;
  }

  /** Chart and note; nothing where the loss is not known. */
  static List<Section> of(PackBarrier barrier, PackConductance pack) {
    return Double.isNaN(barrier.volatileLoss())
        ? List.of()
        : new StrengthSections(barrier.demand().alcohol().orElseThrow())
            .through(pack, barrier.demand().days());
  }

  private List<Section> through(PackConductance pack, double until) {
    int points = balance.seasons().constant() ? POINTS : 4;
    new VolatileWalk(balance, pack).through(until, points, this::see);
    return List.of(chart(), note(until));
  }

  private void see(double day, VolatileCourse.Point point) {
    end = point;
    days.add(day);
    alcohol.add(balance.chargeG() * (1 - point.loss()));
    water.add(balance.chargeG() * point.waterG());
  }

  private Section chart() {
    return new Curves(
        Text.of("curve.left"),
        Text.of("axis.days"),
        Text.of("axis.left"),
        List.of(
            new Series(Text.of("series.alcohol-left"), days, alcohol),
            new Series(Text.of("series.water-left"), days, water)),
        Text.of("basis.curve.volatile"));
  }

  private Section note(double until) {
    if (end.loss() == 1) {
      return new Note(Text.of("note.all-gone", until), Text.of("basis.strength"));
    }
    double left = (1 - end.loss() + end.waterG()) * balance.chargeG();
    double weightLost = 100 * (1 - left / balance.content().chargeG());
    return new Note(
        Text.of(
            "note.strength",
            until,
            weightLost,
            100 * end.loss(),
            100 * balance.content().massFraction(),
            100 * end.strength()),
        Text.of("basis.strength"));
  }
}
