package plyworth.plugins.recyclability;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plyworth.shared.data.Fields;

/**
 * A published rule set, or a proxy of our own that says so.
 *
 * @param id its name
 * @param title its name on screens
 * @param edition edition and date
 * @param basis law, guideline, label scheme, proxy …
 * @param scope all must hold, else the set has nothing to say
 * @param gravest whether the gravest rule decides; else the first that fires
 * @param rules its rules, in order
 * @param otherwise what it says when no rule fires
 * @param settledBy the test or document that settles it; may be empty
 */
record RuleSet(
    String id,
    String title,
    String edition,
    String basis,
    Condition[] scope,
    boolean gravest,
    Rule[] rules,
    Otherwise otherwise,
    String settledBy) {

  /** The verdict when no rule fires. */
  record Otherwise(String verdict, int gravity, int classNumber) {
    static Otherwise read(Fields fields) {
      return new Otherwise(
          fields.text("verdict"),
          fields.whole("gravity"),
          fields.has("class") ? fields.whole("class") : -1);
    }
  }

  private enum Decides {
    FIRST,
    GRAVEST
  }

  static RuleSet read(Fields fields) {
    return new RuleSet(
        fields.text("id"),
        fields.text("title"),
        fields.text("edition"),
        fields.text("basis"),
        fields.objects("scope", Condition::read).toArray(Condition[]::new),
        fields.choice("decides", Decides.class) == Decides.GRAVEST,
        fields.objects("rules", Rule::read).toArray(Rule[]::new),
        fields.object("otherwise", Otherwise::read),
        fields.text("settled-by", ""));
  }

  /** Whether the set has anything to say. */
  boolean inScope(double[] figures) {
    return Rule.allHold(scope, figures);
  }

  /** Whether any rule fires; the scope is not asked. */
  boolean anyFires(double[] figures) {
    return deciding(figures) != null;
  }

  /** The rules that fire, in order; the scope is not asked. */
  List<Rule> firing(double[] figures) {
    return Arrays.stream(rules).filter(r -> r.fires(figures)).toList();
  }

  /** The class of figures within the scope. */
  int classOf(double[] figures) {
    Rule rule = deciding(figures);
    return rule == null ? otherwise.classNumber() : rule.classNumber();
  }

  /** The verdict with everything that backs it. */
  Verdict decide(double[] figures) {
    if (!inScope(figures)) {
      return new Verdict(this, false, "out of scope", 0, Optional.empty(), Set.of());
    }
    Set<String> open = new TreeSet<>();
    Rule deciding = deciding(figures);
    for (Rule rule : rules) {
      if (rule == deciding && !gravest) {
        break;
      }
      rule.addOpen(figures, open);
    }
    return deciding == null
        ? new Verdict(this, true, otherwise.verdict(), otherwise.gravity(), Optional.empty(), open)
        : new Verdict(
            this, true, deciding.verdict(), deciding.gravity(), Optional.of(deciding), open);
  }

  /** Whether some rule fires for all figures between the bounds. */
  boolean mustFire(double[] low, double[] high) {
    for (Rule rule : rules) {
      if (Rule.allMust(rule.when(), low, high)) {
        return true;
      }
    }
    return false;
  }

  /** Whether some rule fires for some figures between the bounds. */
  boolean mayFire(double[] low, double[] high) {
    for (Rule rule : rules) {
      if (Rule.allMay(rule.when(), low, high)) {
        return true;
      }
    }
    return false;
  }

  /** Widens {@code span} = {lowest, highest} by every class that the figures may get. */
  void classBounds(double[] low, double[] high, double[] span) {
    for (Rule rule : rules) {
      if (Rule.allMay(rule.when(), low, high)) {
        widen(span, rule.classNumber());
        if (!gravest && Rule.allMust(rule.when(), low, high)) {
          return;
        }
      }
    }
    if (!mustFire(low, high)) {
      widen(span, otherwise.classNumber());
    }
  }

  static void widen(double[] span, double figure) {
    span[0] = Math.min(span[0], figure);
    span[1] = Math.max(span[1], figure);
  }

  private Rule deciding(double[] figures) {
    Rule decides = null;
    for (Rule rule : rules) {
      if ((decides == null || rule.gravity() > decides.gravity()) && rule.fires(figures)) {
        decides = rule;
        if (!gravest) {
          return decides;
        }
      }
    }
    return decides;
  }
}
