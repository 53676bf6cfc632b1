package plyworth.shared.scoring.toy;

import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;

class ToyConformanceTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new ToyPlugin();
  }
}
