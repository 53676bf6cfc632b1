package plyworth.plugins.cost;

import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;

class CostConformanceTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new CostPlugin();
  }
}
