package plyworth.workbench.engine.table;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Outcome;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;

/**
 * Scores a block structure by structure, where a plugin has no layerwise form or leaves it open.
 */
final class StructureBlocks {

  private StructureBlocks() {}

  /** Fills the block; false when it was cancelled on the way. */
  static boolean fill(BoundPlugins bound, int p, Block block, PluginBlocks.Rows rows) {
    BoundPlugin plugin = bound.plugins().get(p);
    for (int row = 0; row < block.size; row++) {
      if (!rows.goOn()) {
        return false;
      }
      score(bound, plugin, block, rows, row);
    }
    return true;
  }

  /** Scores the rows that a layerwise form left undecided; false when it was cancelled. */
  static boolean decide(BoundPlugins bound, int p, Block block, PluginBlocks.Rows rows) {
    for (int row = 0; row < block.size; row++) {
      if (block.undecided[row]) {
        if (!rows.goOn()) {
          return false;
        }
        score(bound, bound.plugins().get(p), block, rows, row);
      }
    }
    return true;
  }

  private static void score(
      BoundPlugins bound, BoundPlugin plugin, Block block, PluginBlocks.Rows rows, int row) {
    Map<Figure, Double> needed = needed(bound, plugin, block, row);
    var structure = rows.structure(row);
    Assessment assessment = Plugins.call(plugin, () -> plugin.scorer().score(structure, needed));
    store(plugin, assessment, block, row);
  }

  private static Map<Figure, Double> needed(
      BoundPlugins bound, BoundPlugin plugin, Block block, int row) {
    Map<Figure, Double> needed = new EnumMap<>(Figure.class);
    List<Figure> needs = plugin.plugin().needs();
    for (int i = 0; i < needs.size(); i++) {
      if (bound.available().contains(needs.get(i))) {
        needed.put(needs.get(i), block.needed[i][row]);
      }
    }
    return needed;
  }

  private static void store(BoundPlugin plugin, Assessment assessment, Block block, int row) {
    if (assessment == null) {
      throw new ScoringFault(plugin.id(), "it answers nothing for a structure");
    }
    List<Criterion> criteria = plugin.plugin().criteria();
    for (int c = 0; c < criteria.size(); c++) {
      Outcome outcome = assessment.outcomes().get(criteria.get(c).id());
      if (outcome == null) {
        throw new ScoringFault(plugin.id(), "it gives no outcome for " + criteria.get(c).id());
      }
      block.low[c][row] = outcome.orUnknown();
      block.high[c][row] = block.low[c][row];
    }
    List<Figure> provides = plugin.plugin().provides();
    for (int f = 0; f < provides.size(); f++) {
      block.provided[f][row] = assessment.provided().getOrDefault(provides.get(f), Double.NaN);
    }
    block.blocked[row] = blocked(plugin, assessment);
  }

  private static long blocked(BoundPlugin plugin, Assessment assessment) {
    List<String> rules = plugin.plugin().blockingRules().stream().map(BlockingRule::id).toList();
    long bits = 0;
    for (Finding finding : assessment.findings()) {
      if (finding.level() == Finding.Level.BLOCKS) {
        int rule = rules.indexOf(finding.rule());
        if (rule < 0) {
          throw new ScoringFault(
              plugin.id(), "it blocks by the rule " + finding.rule() + ", which it never declared");
        }
        bits |= 1L << rule;
      }
    }
    return bits;
  }
}
