package plyworth.workbench.analysis;

import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import plyworth.shared.scoring.BlockingRule.Ground;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.TableSize;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;

/**
 * Counts the candidates that cannot be made in the plant of a study.
 *
 * <p>A table knows of a blocked candidate that it is blocked, not by whom. So the plugins that
 * block nothing but what cannot be made go over the candidates once more, alone: what they block is
 * counted whether another plugin blocks it as well or not.
 */
public final class NotMakeable {

  private NotMakeable() {}

  /**
   * How many there are; empty without a plant, without such a plugin, or where nothing is counted.
   */
  public static OptionalLong count(Ranked ranked) {
    Prepared prepared = ranked.scored().compiled().prepared();
    List<BoundPlugin> judges =
        prepared.bound().plugins().stream().filter(p -> judges(p.plugin())).toList();
    boolean counted = ranked.ranking().isCounted() && ranked.ranking().complete();
    if (ranked.study().plant().isEmpty() || judges.isEmpty() || !counted) {
      return OptionalLong.empty();
    }
    Tabulation tabulation =
        Tabulation.of(
            ranked.scored().compiled().paths(),
            BoundPlugins.of(judges, Set.of()),
            criterion -> false,
            TableSize.standardBudget());
    return tabulation.size().fits()
        ? OptionalLong.of(tabulation.run(Progress.NONE).count(Chunk.BLOCKED))
        : OptionalLong.empty();
  }

  /** Whether a plugin blocks what cannot be made, and nothing else. */
  static boolean judges(ScoringPlugin plugin) {
    return plugin.needs().isEmpty()
        && !plugin.blockingRules().isEmpty()
        && plugin.blockingRules().stream().allMatch(r -> r.ground() == Ground.NOT_MAKEABLE);
  }
}
