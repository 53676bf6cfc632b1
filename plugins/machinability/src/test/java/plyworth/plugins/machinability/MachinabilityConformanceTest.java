package plyworth.plugins.machinability;

import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;

class MachinabilityConformanceTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new MachinabilityPlugin();
  }
}
