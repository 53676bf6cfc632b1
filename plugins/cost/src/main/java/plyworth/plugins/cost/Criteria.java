package plyworth.plugins.cost;

import java.util.List;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Criterion.Direction;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.scoring.ValueFunction.Point;

/**
 * What is measured, in the order of the columns.
 *
 * <p>The reference points are those of sachets and stick packs of some 80 to 200 cm² of film,
 * common practice: 2 EUR per 1000 good packs is a plain coated paper in a long run on a fast line,
 * 12 EUR a dear laminate, a short run or a slow line. Money is worth the same wherever it is spent,
 * so the lines are straight. Only the cost of a good pack carries weight: the others are its parts.
 */
final class Criteria {

  static final int PACKED = 0;
  static final int PRICE_PER_1000 = 1;
  static final int PRICE_PER_1000_M2 = 2;
  static final int GRAMMAGE = 3;
  static final int GAUGE = 4;
  static final int YIELD = 5;

  static final List<Criterion> ALL =
      List.of(
          criterion(
              "packed-per-1000",
              "EUR",
              "per 1000 good packs, packing line included",
              Direction.LOWER,
              1,
              line(2, 1, "plain coated paper, long run, fast line", 12, 0, "dear or slow")),
          criterion(
              "price-per-1000",
              "EUR",
              "film for 1000 packs, delivered, in the order of the brief",
              Direction.LOWER,
              0,
              line(1, 1, "plain coated paper, long run", 10, 0, "dear laminate, short run")),
          criterion(
              "price-per-1000m2",
              "EUR",
              "delivered, in the order of the brief",
              Direction.LOWER,
              0,
              line(150, 1, "plain coated paper", 1200, 0, "dear laminate")),
          criterion(
              "grammage",
              "g/m2",
              "dry",
              Direction.LOWER,
              0,
              line(40, 1, "light film laminate", 150, 0, "heavy foil laminate")),
          criterion(
              "gauge",
              "um",
              "sum of the layers",
              Direction.LOWER,
              0,
              line(40, 1, "light film laminate", 200, 0, "heavy laminate")),
          criterion(
              "yield",
              "m2/kg",
              "dry",
              Direction.HIGHER,
              0,
              line(5, 0, "heavy laminate", 25, 1, "light film laminate")));

  private Criteria() {}

  private static Criterion criterion(
      String id,
      String unit,
      String conditions,
      Direction direction,
      double weight,
      ValueFunction value) {
    return new Criterion(
        id,
        Text.of("criterion." + id),
        unit,
        conditions,
        direction,
        value,
        weight,
        List.of(),
        Text.of("criterion." + id + ".formula"));
  }

  private static ValueFunction line(
      double from, double worthFrom, String nameFrom, double to, double worthTo, String nameTo) {
    return new ValueFunction(
        false, List.of(new Point(from, worthFrom, nameFrom), new Point(to, worthTo, nameTo)));
  }
}
