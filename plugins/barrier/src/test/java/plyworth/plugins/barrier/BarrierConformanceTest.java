package plyworth.plugins.barrier;

import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;

class BarrierConformanceTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new BarrierPlugin();
  }
}
