package plyworth.plugins.supply;

import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;

/** The rules hold as well where a study says nothing of a plant. */
class WithoutPlantTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new SupplyPlugin();
  }
}
