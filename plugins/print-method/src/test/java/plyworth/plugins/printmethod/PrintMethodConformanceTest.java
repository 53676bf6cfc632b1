package plyworth.plugins.printmethod;

import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;

class PrintMethodConformanceTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new PrintMethodPlugin();
  }
}
