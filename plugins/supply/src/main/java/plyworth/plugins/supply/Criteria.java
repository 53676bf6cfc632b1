package plyworth.plugins.supply;

import java.util.List;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Criterion.Direction;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.scoring.ValueFunction.Point;

/**
 * What is measured, in the order of the columns. Reference points are common practice. None carries
 * weight in a new study: what a late or a dear pass is worth, a study has to say.
 */
final class Criteria {

  static final int LEAD_TIME = 0;
  static final int SENT_OUT = 1;
  static final int SURPLUS = 2;
  static final int SURPLUS_VALUE = 3;

  static final List<Criterion> ALL =
      List.of(
          criterion(
              "lead-time",
              "days",
              "from order to slit reels",
              new Point(14, 1, "webs in stock, passes in the plant"),
              new Point(84, 0, "webs from a mill, passes sent out")),
          criterion(
              "sent-out-per-1000",
              "EUR",
              "what services ask, per 1000 packs ordered",
              new Point(0, 1, "all passes in the plant"),
              new Point(3, 0, "as dear as a plain laminate")),
          criterion(
              "surplus",
              "kg",
              "webs left over from minimum orders, one order",
              new Point(0, 1, "every web used up"),
              new Point(3000, 0, "a lorry load waits for the next order")),
          criterion(
              "surplus-value",
              "EUR",
              "price of what is left over, one order",
              new Point(0, 1, "nothing tied up"),
              new Point(10_000, 0, "as much as a small order is worth")));

  private Criteria() {}

  private static Criterion criterion(String id, String unit, String conditions, Point... points) {
    return new Criterion(
        id,
        Text.of("criterion." + id),
        unit,
        conditions,
        Direction.LOWER,
        new ValueFunction(false, List.of(points)),
        0,
        List.of(),
        Text.of("criterion." + id + ".formula"));
  }
}
