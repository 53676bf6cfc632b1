package plyworth.plugins.recyclability;

import java.util.Optional;
import java.util.Set;

/**
 * What a rule set says of a structure.
 *
 * @param set the set
 * @param inScope false when the set has nothing to say, which is never a pass
 * @param words the verdict in the words of the set
 * @param gravity 0 fine, 1 note, 2 conditional, 3 fail
 * @param rule the rule that decides; empty when none fires
 * @param open measures that are missing, so that the verdict is provisional
 */
record Verdict(
    RuleSet set,
    boolean inScope,
    String words,
    int gravity,
    Optional<Rule> rule,
    Set<String> open) {

  /** Id of the deciding rule, or of the set when none fires. */
  String decidedBy() {
    return rule.map(Rule::id).orElse(set.id());
  }

  /** Source, confidence and edition in one line. */
  String source() {
    return rule.map(r -> r.source() + " (" + r.confidence().words() + "); ").orElse("")
        + set.edition();
  }
}
