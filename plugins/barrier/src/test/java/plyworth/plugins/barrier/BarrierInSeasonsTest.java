package plyworth.plugins.barrier;

import java.util.List;
import java.util.Map;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringPlugin;

/** Whatever holds of tight packs in a constant climate holds of leaking ones through seasons. */
class BarrierInSeasonsTest extends PluginConformance {

  private static final Climate DAMP =
      new Climate(
          "damp",
          List.of(new Season(120, 32, 85), new Season(120, 25, 60), new Season(125, 18, 86)));

  private static final Climate SWINGING =
      new Climate("swinging", List.of(new Season(30, 8, 20), new Season(30, 28, 88)));

  @Override
  protected ScoringPlugin plugin() {
    return new BarrierPlugin();
  }

  @Override
  protected List<Brief> briefs() {
    return List.of(
        SampleBriefs.sugarStick().in(DAMP),
        SampleBriefs.seasoningStick().in(SWINGING),
        SampleBriefs.alcoholWipe().in(DAMP),
        SampleBriefs.freezeDriedSnack().in(DAMP));
  }

  @Override
  protected Map<String, Double> settings() {
    return Map.of("leaks-per-pack", 0.01);
  }
}
