package plyworth.plugins.barrier;

import java.util.List;
import java.util.Optional;
import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Today;
import plyworth.shared.structure.LayerNotation;

/** Whatever holds on standard terms holds on terms calibrated on a baseline of foil. */
class BarrierCalibratedTest extends PluginConformance {

  private static final String FOIL =
      "bopet 12 um / adhesive-pu-solvent 2.5 g/m2 / aluminium-foil 7 um / ldpe 40 um";

  @Override
  protected ScoringPlugin plugin() {
    return new BarrierPlugin();
  }

  @Override
  protected Today today() {
    return new Today(
        Optional.of(LayerNotation.readStructure(FOIL)),
        List.of(
            Bench.measured("shelf-life", 300, 1.4, ""),
            Bench.measured("volatile-loss", 2, 1.3, "weighed"),
            Bench.measured("otr", 5, 1, "")));
  }
}
