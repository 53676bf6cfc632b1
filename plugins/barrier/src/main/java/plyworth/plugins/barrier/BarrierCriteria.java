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

  /** Id of the plugin whose criteria these are. */
  static final String PLUGIN = "barrier";

  static final int OTR = 0;
  static final int WVTR = 1;
  static final int PACK_OTR = 2;
  static final int PACK_WVTR = 3;
  static final int SHELF_LIFE = 4;
  static final int MARGIN = 5;
  static final int VOLATILE_LOSS = 6;
  static final int LEAK_RISK = 7;
  static final int LIGHT = 8;

  static final String OTR_ID = "otr";
  static final String WVTR_ID = "wvtr";
  static final String PACK_OTR_ID = "pack-otr";
  static final String PACK_WVTR_ID = "pack-wvtr";
  static final String SHELF_LIFE_ID = "shelf-life";
  static final String MARGIN_ID = "margin";
  static final String VOLATILE_LOSS_ID = "volatile-loss";
  static final String LEAK_RISK_ID = "leak-risk";
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
            PACK_OTR_ID,
            "cm3/(pack.day)",
            "23 °C 50 % RH, in air, formed and handled pack",
            Direction.LOWER,
            ValueFunction.logarithmic(0.001, 1, 10, 0),
            0),
        criterion(
            PACK_WVTR_ID,
            "mg/(pack.day)",
            "38 °C 90 % RH, dry inside, formed and handled pack",
            Direction.LOWER,
            ValueFunction.logarithmic(1, 1, 1000, 0),
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
        inClasses(LEAK_RISK_ID),
        inClasses(LIGHT_ID));
  }

  static List<BlockingRule> rules() {
    return List.of(
        new BlockingRule(DOES_NOT_KEEP, Text.of("rule.does-not-keep")),
        new BlockingRule(VOLATILE_LOSS_ID, Text.of("rule.volatile-loss")));
  }

  /** One of three classes, the highest the best. */
  private static Criterion inClasses(String id) {
    return new Criterion(
        id,
        Text.of("criterion." + id),
        "",
        "",
        Direction.HIGHER,
        ValueFunction.linear(0, 0, 2, 1),
        0,
        List.of(Text.of(id + ".0"), Text.of(id + ".1"), Text.of(id + ".2")),
        Text.of("formula." + id));
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
