package plyworth.plugins.recyclability;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import plyworth.shared.data.Fields;

/**
 * One rule of a set.
 *
 * @param id its name, shown with everything it decides
 * @param when all must hold
 * @param verdict what it says, in the words of the rule set
 * @param gravity 0 fine, 1 note, 2 conditional, 3 fail
 * @param classNumber class that it leads to; −1 when the set gives no classes
 * @param source where it was read
 * @param confidence how far it can be trusted
 */
record Rule(
    String id,
    Condition[] when,
    String verdict,
    int gravity,
    int classNumber,
    String source,
    Confidence confidence) {

  /** How a figure of a rule is known. */
  enum Confidence {
    /** Read at the source. */
    READ,
    /** Read where somebody else restates it. */
    SECOND_HAND,
    /** Follows by arithmetic from figures that were read. */
    DERIVED,
    /** Read, and applied to a case that the wording does not name. */
    INTERPRETED,
    /** Recalled, not read. */
    MEMORY;

    /** In words. */
    String words() {
      return this == MEMORY ? "from memory" : name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  static Rule read(Fields fields) {
    return new Rule(
        fields.text("id"),
        fields.objects("when", Condition::read).toArray(Condition[]::new),
        fields.text("verdict"),
        fields.whole("gravity"),
        fields.has("class") ? fields.whole("class") : -1,
        fields.text("source"),
        fields.choice("confidence", Confidence.class));
  }

  /** Whether the rule fires. */
  boolean fires(double[] figures) {
    return allHold(when, figures);
  }

  static boolean allHold(Condition[] conditions, double[] figures) {
    for (Condition condition : conditions) {
      if (!condition.holds(figures)) {
        return false;
      }
    }
    return true;
  }

  static boolean allMust(Condition[] conditions, double[] low, double[] high) {
    for (Condition condition : conditions) {
      if (!condition.must(low, high)) {
        return false;
      }
    }
    return true;
  }

  static boolean allMay(Condition[] conditions, double[] low, double[] high) {
    for (Condition condition : conditions) {
      if (!condition.may(low, high)) {
        return false;
      }
    }
    return true;
  }

  /** Adds the measures without which the rule cannot be decided. */
  void addOpen(double[] figures, Set<String> open) {
    Set<String> mine = new TreeSet<>();
    for (Condition condition : when) {
      if (condition.open(figures)) {
        mine.add(condition.measure().id());
      } else if (!condition.holds(figures)) {
        return;
      }
    }
    open.addAll(mine);
  }
}
