package plyworth.workbench.host;

import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringPlugin;

/**
 * A plugin and its scorer for one study and draw.
 *
 * @param plugin the plugin
 * @param scorer its scorer
 */
public record BoundPlugin(ScoringPlugin plugin, Scorer scorer) {

  /** The plugin's id. */
  public String id() {
    return plugin.card().id();
  }
}
