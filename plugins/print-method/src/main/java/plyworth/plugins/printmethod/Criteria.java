package plyworth.plugins.printmethod;

import java.util.List;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Criterion.Direction;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.scoring.ValueFunction.Point;

/** What the plugin measures, in the order of the layerwise state, and what it blocks. */
final class Criteria {

  static final String EMITTED = "solvent-emitted";
  static final String INPUT = "solvent-input";
  static final String ENERGY = "drying-heat";
  static final String DRY = "ink-dry";
  static final String WATER = "water-evaporated";
  static final String SUITABILITY = "suitability";
  static final String UNSUITABLE = "method-unsuitable";
  static final String PRODUCT_SIDE = "print-on-product-side";

  static final List<Criterion> ALL =
      List.of(
          amount(EMITTED, "kg/1000m2", scale(true, 0.1, 6, "well enclosed", "unabated gravure"), 1),
          amount(INPUT, "kg/1000m2", scale(true, 0.1, 6, "water-based flexo", "full gravure"), 0),
          amount(ENERGY, "kWh/1000m2", scale(false, 2, 50, "light", "heavy"), 0.5),
          amount(DRY, "g/m2", scale(false, 0.8, 4, "light print", "heavy print"), 0),
          amount(WATER, "kg/1000m2", scale(false, 0.5, 6, "light print", "heavy print"), 0),
          new Criterion(
              SUITABILITY,
              Text.of("criterion." + SUITABILITY),
              "",
              "",
              Direction.HIGHER,
              new ValueFunction(
                  false,
                  List.of(
                      new Point(0, 0, "none"),
                      new Point(1, 0.5, "conditional"),
                      new Point(2, 1, "normal"))),
              1,
              List.of(Text.of("class.none"), Text.of("class.conditional"), Text.of("class.normal")),
              Text.of("formula." + SUITABILITY)));

  static final List<BlockingRule> RULES =
      List.of(
          new BlockingRule(UNSUITABLE, Text.of("rule." + UNSUITABLE)),
          new BlockingRule(PRODUCT_SIDE, Text.of("rule." + PRODUCT_SIDE)));

  private Criteria() {}

  private static Criterion amount(String id, String unit, ValueFunction value, double weight) {
    Text title = Text.of("criterion." + id);
    Text formula = Text.of("formula." + id);
    return new Criterion(id, title, unit, "", Direction.LOWER, value, weight, List.of(), formula);
  }

  private static ValueFunction scale(
      boolean logarithmic, double best, double worst, String bestName, String worstName) {
    return new ValueFunction(
        logarithmic, List.of(new Point(best, 1, bestName), new Point(worst, 0, worstName)));
  }
}
