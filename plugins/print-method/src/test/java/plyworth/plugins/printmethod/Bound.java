package plyworth.plugins.printmethod;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Market;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.SampleStructures;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

/** The plugin bound to the standard libraries, with some parameters set. */
record Bound(Scorer scorer) {

  static Bound standard() {
    return with(Map.of());
  }

  static Bound with(Map<String, Double> set) {
    return with(set, SampleBriefs.seasoningStick(), ProcessLibrary.standard());
  }

  static Bound with(ProcessLibrary processes) {
    return with(Map.of(), SampleBriefs.seasoningStick(), processes);
  }

  static Bound in(String region) {
    Brief brief = SampleBriefs.seasoningStick();
    Brief moved =
        new Brief(
            brief.product(),
            brief.climate(),
            brief.shelfLifeDays(),
            brief.pack(),
            brief.machine(),
            new Market(region, 2027, 2035),
            brief.order());
    return with(Map.of(), moved, ProcessLibrary.standard());
  }

  private static Bound with(Map<String, Double> set, Brief brief, ProcessLibrary processes) {
    PrintMethodPlugin plugin = new PrintMethodPlugin();
    Map<String, Double> parameters = new TreeMap<>();
    plugin.parameters().forEach(p -> parameters.put(p.id(), p.standard()));
    parameters.putAll(set);
    ScoringContext context =
        new ScoringContext(
            brief, SampleStructures.library(), processes, parameters, Set.of(), Draw.TYPICAL);
    return new Bound(plugin.bind(context));
  }

  Assessment score(String structure) {
    return scorer.score(LayerNotation.readStructure(structure), Map.of());
  }

  double figure(String criterion, String structure) {
    return score(structure).figure(criterion);
  }

  boolean finds(Finding.Level level, String rule, String structure) {
    return score(structure).findings().stream()
        .anyMatch(f -> f.level() == level && f.rule().equals(rule));
  }
}
