package plyworth.shared.scoring.toy;

import java.util.List;
import java.util.stream.Stream;
import plyworth.shared.brief.Brief;
import plyworth.shared.scoring.PluginConformance;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.SampleStructures;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/** The kit on one deviation, with briefs and structures enough to tell the rules apart. */
final class DeviationTrial extends PluginConformance {

  /** Without the odd ones, which have a rule of their own; with one of unknown price. */
  private static final List<Structure> STRUCTURES =
      Stream.concat(
              SampleStructures.usual().stream(),
              Stream.of(
                  LayerNotation.readStructure(
                      "bopet 12 um / ldpe 12 um @extrusion-lamination / "
                          + SampleStructures.BARE_FILM
                          + " 200 um")))
          .toList();

  private final ScoringPlugin plugin;

  DeviationTrial(ScoringPlugin plugin) {
    this.plugin = plugin;
  }

  @Override
  protected ScoringPlugin plugin() {
    return plugin;
  }

  @Override
  protected List<Brief> briefs() {
    return List.of(SampleBriefs.sugarStick(), SampleBriefs.alcoholWipe());
  }

  @Override
  protected List<Structure> structures() {
    return STRUCTURES;
  }
}
