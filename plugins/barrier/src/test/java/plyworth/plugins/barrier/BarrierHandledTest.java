package plyworth.plugins.barrier;

import java.util.List;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Handling;
import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringPlugin;

/** Whatever holds of a shipped pack holds however a pack is handled. */
class BarrierHandledTest extends PluginConformance {

  @Override
  protected ScoringPlugin plugin() {
    return new BarrierPlugin();
  }

  @Override
  protected List<Brief> briefs() {
    return List.of(
        SampleBriefs.sugarStick().handled(Handling.FLAT),
        SampleBriefs.seasoningStick().handled(Handling.FORMED),
        SampleBriefs.alcoholWipe().handled(Handling.ROUGH),
        SampleBriefs.freezeDriedSnack().handled(Handling.ROUGH));
  }
}
