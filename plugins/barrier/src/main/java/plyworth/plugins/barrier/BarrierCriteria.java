package plyworth.plugins.barrier;

import java.util.List;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Criterion.Direction;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.scoring.ValueFunction.Point;

/** What is measured, and what can block; the order is that of the columns and bits. */
final class BarrierCriteria {

  static final int OTR = 0;
  static final int WVTR = 1;
  static final int SHELF_LIFE = 2;
  static final int MARGIN = 3;
  static final int VOLATILE_LOSS = 4;
  static final int LIGHT = 5;

  static final String OTR_ID = "otr";
  static final String WVTR_ID = "wvtr";
  static final String SHELF_LIFE_ID = "shelf-life";
  static final String MARGIN_ID = "margin";
  static final String VOLATILE_LOSS_ID = "volatile-loss";
  static final String LIGHT_ID = "light";

  static final String DOES_NOT_KEEP = "does-not-keep";
  static final long DOES_NOT_KEEP_BIT = 1;
  static final long VOLATILE_LOSS_BIT = 2;

  private BarrierCriteria() {}

  static List<Criterion> all() {
    return List.of(
        criterion(
            OTR_ID,
            "cm3/(m2.day.bar)",
            "23 °C 50 % RH, flat",
            Direction.LOWER,
            ValueFunction.logarithmic(0.1, 1, 1000, 0),
            0),
        criterion(
            WVTR_ID,
            "g/(m2.day)",
            "38 °C 90 % RH, flat",
            Direction.LOWER,
            ValueFunction.logarithmic(0.1, 1, 100, 0),
            0),
        criterion(
            SHELF_LIFE_ID,
            "days",
            "storage climate of the brief, formed and handled pack",
            Direction.HIGHER,
            ValueFunction.linear(0, 0, 1095, 1),
            0),
        criterion(
            MARGIN_ID,
            "",
            "storage climate of the brief, formed and handled pack",
            Direction.HIGHER,
            new ValueFunction(
                false, List.of(new Point(1, 0, "the need"), new Point(2.5, 1, "ample"))),
            3),
        criterion(
            VOLATILE_LOSS_ID,
            "%",
            "over the shelf life of the brief, formed and handled pack",
            Direction.LOWER,
            ValueFunction.linear(0, 1, 5, 0),
            0),
        new Criterion(
            LIGHT_ID,
            Text.of("criterion.light"),
            "",
            "",
            Direction.HIGHER,
            ValueFunction.linear(0, 0, 2, 1),
            0,
            List.of(Text.of("light.0"), Text.of("light.1"), Text.of("light.2")),
            Text.of("formula.light")));
  }

  static List<BlockingRule> rules() {
    return List.of(
        new BlockingRule(DOES_NOT_KEEP, Text.of("rule.does-not-keep")),
        new BlockingRule(VOLATILE_LOSS_ID, Text.of("rule.volatile-loss")));
  }

  private static Criterion criterion(
      String id,
      String unit,
      String conditions,
      Direction direction,
      ValueFunction value,
      double weight) {
    Text title = Text.of("criterion." + id);
    Text formula = Text.of("formula." + id);
    return new Criterion(id, title, unit, conditions, direction, value, weight, List.of(), formula);
  }
}
