package plyworth.shared.scoring.toy;

import plyworth.shared.scoring.ScoringPlugin;

/**
 * A plugin that breaks one rule.
 *
 * @param rule name of the test that must fail, and it alone
 * @param plugin the plugin
 */
record Deviation(String rule, ScoringPlugin plugin) {

  @Override
  public String toString() {
    return rule;
  }
}
