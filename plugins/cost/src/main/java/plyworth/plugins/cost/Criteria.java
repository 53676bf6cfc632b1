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
 * so the lines are straight; the flat tail to 40 EUR keeps larger packs apart, whose studies should
 * set points of their own. Only the cost of a good pack carries weight: the others are its parts.
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
              line(
                  new Point(2, 1, "small sachet, plain coated paper, long run, fast line"),
                  new Point(12, 0.2, "small sachet, dear laminate, short run or slow line"),
                  new Point(40, 0, "large pillow pack, dear laminate"))),
          criterion(
              "price-per-1000",
              "EUR",
              "film for 1000 packs, delivered, in the order of the brief",
              Direction.LOWER,
              0,
              line(
                  new Point(1, 1, "plain coated paper, long run"),
                  new Point(10, 0, "dear laminate, short run"))),
          criterion(
              "price-per-1000m2",
              "EUR",
              "delivered, in the order of the brief",
              Direction.LOWER,
              0,
              line(new Point(150, 1, "plain coated paper"), new Point(1200, 0, "dear laminate"))),
          criterion(
              "grammage",
              "g/m2",
              "dry",
              Direction.LOWER,
              0,
              line(
                  new Point(40, 1, "light film laminate"),
                  new Point(150, 0, "heavy foil laminate"))),
          criterion(
              "gauge",
              "um",
              "sum of the layers",
              Direction.LOWER,
              0,
              line(new Point(40, 1, "light film laminate"), new Point(200, 0, "heavy laminate"))),
          criterion(
              "yield",
              "m2/kg",
              "dry",
              Direction.HIGHER,
              0,
              line(new Point(5, 0, "heavy laminate"), new Point(25, 1, "light film laminate"))));

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

  private static ValueFunction line(Point... points) {
    return new ValueFunction(false, List.of(points));
  }
}
