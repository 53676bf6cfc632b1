package plyworth.plugins.machinability;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.data.Fields;
import plyworth.shared.data.JsonText;
import plyworth.shared.data.Resources;
import plyworth.shared.scoring.Finding;
import plyworth.shared.structure.KindExpression;

/**
 * What contents do to a layer, by its place.
 *
 * @param id identifier
 * @param agent what is in the product
 * @param outer what lies next to the layer on its outer side; empty for anything
 * @param layer the layer that is attacked, or that resists
 * @param place where in the structure the layer lies
 * @param level how grave
 * @param reason why, in one sentence
 * @param source where from
 */
record AttackRule(
    String id,
    Agent agent,
    Optional<KindExpression> outer,
    KindExpression layer,
    Place place,
    Finding.Level level,
    String reason,
    String source) {

  private static final String FILE = "attack-rules.json";
  private static final List<AttackRule> STANDARD = read();

  /** Where in the structure a rule looks. */
  enum Place {
    /** At every layer and its outer neighbour. */
    ANY,
    /** At the innermost layer alone. */
    INNERMOST
  }

  /** The rules of the trade, in file order. */
  static List<AttackRule> standard() {
    return STANDARD;
  }

  private static List<AttackRule> read() {
    String text = Resources.text(AttackRule.class, FILE);
    return Fields.list(JsonText.read(text, FILE), json -> Fields.read(json, AttackRule::read));
  }

  /** Whether the rule speaks of a layer with these tags inside one with those. */
  boolean matches(Set<String> kinds, Set<String> outerKinds) {
    return layer.matches(kinds) && outer.map(o -> o.matches(outerKinds)).orElse(true);
  }

  private static AttackRule read(Fields fields) {
    return new AttackRule(
        fields.text("id"),
        fields.choice("agent", Agent.class),
        fields.has("outer")
            ? Optional.of(new KindExpression(fields.text("outer")))
            : Optional.empty(),
        new KindExpression(fields.text("layer")),
        fields.choice("place", Place.class),
        fields.choice("level", Finding.Level.class),
        fields.text("reason"),
        fields.text("source"));
  }
}
