package plyworth.plugins.barrier.pack;

import java.util.List;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Criterion.Direction;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.scoring.ValueFunction.Point;

/** What is measured, and what can block; the order is that of the columns and bits. */
public final class BarrierCriteria {

  /** Id of the plugin whose criteria these are. */
  public static final String PLUGIN = "barrier";

  /** Column of the oxygen transmission of the flat sheet. */
  public static final int OTR = 0;

  /** Column of the water vapour transmission of the flat sheet. */
  public static final int WVTR = 1;

  /** Column of the oxygen transmission of the pack. */
  public static final int PACK_OTR = 2;

  /** Column of the water vapour transmission of the pack. */
  public static final int PACK_WVTR = 3;

  /** Column of the shelf life. */
  public static final int SHELF_LIFE = 4;

  /** Column of the margin. */
  public static final int MARGIN = 5;

  /** Column of the volatile loss. */
  public static final int VOLATILE_LOSS = 6;

  /** Column of the class of leak risk. */
  public static final int LEAK_RISK = 7;

  /** Column of the class of light barrier. */
  public static final int LIGHT = 8;

  /** Oxygen transmission of the flat sheet at 23 °C 50 % RH, cm³/(m²·day·bar). */
  public static final String OTR_ID = "otr";

  /** Water vapour transmission of the flat sheet at 38 °C 90 % RH, g/(m²·day). */
  public static final String WVTR_ID = "wvtr";

  /** Oxygen that enters the handled pack from air at 23 °C 50 % RH, cm³/day. */
  public static final String PACK_OTR_ID = "pack-otr";

  /** Water vapour that enters the handled, dry pack at 38 °C 90 % RH, mg/day. */
  public static final String PACK_WVTR_ID = "pack-wvtr";

  /** Shelf life in the storage climate of the brief, days. */
  public static final String SHELF_LIFE_ID = "shelf-life";

  /** Shelf life over that of the brief. */
  public static final String MARGIN_ID = "margin";

  /** Volatile content lost over the shelf life of the brief, %. */
  public static final String VOLATILE_LOSS_ID = "volatile-loss";

  /** How unlikely leaks at steps of the seal are: 0, 1 or 2, see {@link LeakRisk}. */
  public static final String LEAK_RISK_ID = "leak-risk";

  /** How far light is stopped: 0, 1 or 2, see {@link LightClass}. */
  public static final String LIGHT_ID = "light";

  /** Rule that blocks what does not keep as long as the brief asks. */
  public static final String DOES_NOT_KEEP = "does-not-keep";

  /** Bit of the rule {@link #DOES_NOT_KEEP} in a block. */
  public static final long DOES_NOT_KEEP_BIT = 1;

  /** Bit of the rule on what is lost of a volatile content, named as its criterion is. */
  public static final long VOLATILE_LOSS_BIT = 2;

  private BarrierCriteria() {}

  /** All criteria, in the order of their columns. */
  public static List<Criterion> all() {
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

  /** All blocking rules, in the order of their bits. */
  public static List<BlockingRule> rules() {
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
