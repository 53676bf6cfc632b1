package plyworth.plugins.machinability;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plyworth.shared.scoring.Finding.Level;

/**
 * The rules that apply to one product, and what a set of them that fired amounts to. A set is kept
 * as a whole number, bit i for rule i.
 *
 * @param rules rules for agents that are in the product, at most 53
 * @param blocking the set of those that block
 * @param warning the set of those that warn
 */
record Attack(List<AttackRule> rules, long blocking, long warning) {

  /** Class of a structure that a rule blocks. */
  static final int BLOCKED = 0;

  /** Class of a structure that a rule warns of. */
  static final int WATCH = 1;

  /** Class of a structure that no rule speaks against. */
  static final int PASS = 2;

  Attack {
    rules = List.copyOf(rules);
    if (rules.size() > 53) {
      throw new IllegalArgumentException("more than 53 attack rules do not fit one set");
    }
  }

  /** The standard rules for a product with these agents. */
  static Attack by(Set<Agent> agents) {
    List<AttackRule> rules =
        AttackRule.standard().stream().filter(r -> agents.contains(r.agent())).toList();
    return new Attack(rules, set(rules, Level.BLOCKS), set(rules, Level.WARNS));
  }

  /** The rules of a place that fire at a layer. */
  long fired(AttackRule.Place place, Set<String> kinds, Set<String> outerKinds) {
    long fired = 0;
    for (int i = 0; i < rules.size(); i++) {
      if (rules.get(i).place() == place && rules.get(i).matches(kinds, outerKinds)) {
        fired |= 1L << i;
      }
    }
    return fired;
  }

  /** The rules of a set. */
  List<AttackRule> in(long fired) {
    List<AttackRule> named = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      if ((fired & 1L << i) != 0) {
        named.add(rules.get(i));
      }
    }
    return named;
  }

  /** The class that a set amounts to. */
  int verdict(long fired) {
    if ((fired & blocking) != 0) {
      return BLOCKED;
    }
    return (fired & warning) != 0 ? WATCH : PASS;
  }

  private static long set(List<AttackRule> rules, Level level) {
    long set = 0;
    for (int i = 0; i < rules.size(); i++) {
      set |= rules.get(i).level() == level ? 1L << i : 0;
    }
    return set;
  }
}
