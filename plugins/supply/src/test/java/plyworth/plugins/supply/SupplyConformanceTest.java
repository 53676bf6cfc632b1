package plyworth.plugins.supply;

import java.util.Optional;
import plyworth.shared.plant.Plant;
import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.SamplePlants;
import plyworth.shared.scoring.ScoringPlugin;

class SupplyConformanceTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new SupplyPlugin();
  }

  @Override
  protected Optional<Plant> plant() {
    return Optional.of(SamplePlants.mill());
  }
}
