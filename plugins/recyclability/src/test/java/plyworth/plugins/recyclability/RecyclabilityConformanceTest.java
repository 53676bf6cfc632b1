package plyworth.plugins.recyclability;

import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;

class RecyclabilityConformanceTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new RecyclabilityPlugin();
  }
}
