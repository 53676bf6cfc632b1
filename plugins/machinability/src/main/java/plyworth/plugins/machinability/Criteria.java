package plyworth.plugins.machinability;

import java.util.List;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Criterion.Direction;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.scoring.ValueFunction.Point;

/** What the plugin measures and by what it blocks, in the order of the columns and bits. */
final class Criteria {

  static final String SEAL_DWELL = "seal-dwell";
  static final String SEAL_WINDOW = "seal-window";
  static final String BENDING_STIFFNESS = "bending-stiffness";
  static final String PACKS_PER_MINUTE = "packs-per-minute";
  static final String TENSILE_STIFFNESS = "tensile-stiffness";
  static final String ATTACK = "attack";

  static final String ATTACK_ON_BOND = "attack-on-bond";
  static final String CANNOT_SEAL = "cannot-seal";
  static final String SEALANT_TOO_THIN = "sealant-too-thin";

  static final List<BlockingRule> RULES =
      List.of(rule(ATTACK_ON_BOND), rule(CANNOT_SEAL), rule(SEAL_WINDOW), rule(SEALANT_TOO_THIN));

  static final List<Criterion> ALL =
      List.of(
          criterion(
              SEAL_DWELL,
              "s",
              Direction.LOWER,
              straight(
                  new Point(0.1, 1, "shortest dwell of fast machines"),
                  new Point(0.5, 0, "longest dwell of multilane machines")),
              1),
          criterion(
              SEAL_WINDOW,
              "K",
              Direction.HIGHER,
              straight(new Point(5, 0, "does not run"), new Point(15, 1, "comfortable")),
              2),
          criterion(
              BENDING_STIFFNESS,
              "N.mm",
              Direction.BAND,
              new ValueFunction(
                  true,
                  List.of(
                      new Point(0.005, 0, "limp"),
                      new Point(0.03, 1, "least of flat sachet machines"),
                      new Point(0.4, 1, "most of vertical machines"),
                      new Point(1.5, 0, "most of multilane machines"))),
              1),
          criterion(
              PACKS_PER_MINUTE,
              "packs/min",
              Direction.HIGHER,
              straight(new Point(20, 0, "slow"), new Point(100, 1, "fast")),
              1),
          criterion(
              TENSILE_STIFFNESS,
              "N/mm",
              Direction.HIGHER,
              straight(new Point(50, 0, "register drifts"), new Point(100, 1, "holds register")),
              0),
          new Criterion(
              ATTACK,
              title(ATTACK),
              "",
              "",
              Direction.HIGHER,
              straight(new Point(0, 0, "blocked"), new Point(2, 1, "pass")),
              1,
              List.of(Text.of("attack.blocked"), Text.of("attack.watch"), Text.of("attack.pass")),
              Text.of("criterion.attack.formula")));

  private Criteria() {}

  private static Criterion criterion(
      String id, String unit, Direction direction, ValueFunction value, double weight) {
    String conditions = id.equals(BENDING_STIFFNESS) || id.equals(TENSILE_STIFFNESS) ? "MD" : "";
    return new Criterion(
        id,
        title(id),
        unit,
        conditions,
        direction,
        value,
        weight,
        List.of(),
        Text.of("criterion." + id + ".formula"));
  }

  private static Text title(String id) {
    return Text.of("criterion." + id);
  }

  private static ValueFunction straight(Point from, Point to) {
    return new ValueFunction(false, List.of(from, to));
  }

  /** The column of a criterion. */
  static int indexOf(String id) {
    return ALL.stream().map(Criterion::id).toList().indexOf(id);
  }

  private static BlockingRule rule(String id) {
    return new BlockingRule(id, Text.of("rule." + id));
  }
}
