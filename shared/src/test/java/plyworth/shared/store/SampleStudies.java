package plyworth.shared.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Handling;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.scoring.RandomStructures;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.SampleClimates;
import plyworth.shared.scoring.SamplePlants;
import plyworth.shared.scoring.SampleStructures;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRules;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.CandidateResult;
import plyworth.shared.study.Decision;
import plyworth.shared.study.Limit;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Remark;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.shared.study.WeightsBy;

/** Invented studies: one to read, and random ones for round trips. */
final class SampleStudies {

  private SampleStudies() {}

  /**
   * A stick of sugar with foil or metallised film, four weightings, a limit, a plant and a note.
   */
  static Study sugar() {
    List<Structure> usual = SampleStructures.usual();
    return new Study(
        "Sugar stick",
        "Can the foil go?",
        SampleBriefs.sugarStick(),
        List.of(
            new Position("Print", List.of(Option.NOTHING, option(usual.get(0), 0, 1))),
            new Position("Web", List.of(option(usual.get(0), 1, 2))),
            new Position(
                "Barrier", List.of(option(usual.get(0), 2, 4), option(usual.get(1), 2, 4)))),
        NeighbourRules.standard(),
        usual.get(0),
        List.of(
            new Measurement(
                "barrier/otr",
                0.04,
                "cm3/(m2.day.bar)",
                1.5,
                5,
                "ASTM F1927",
                "2026-03-12",
                "flat sheets")),
        List.of(
            new Weighting("General", Map.of("barrier/otr", 2.0, "cost/price-per-1000", 1.0)),
            new Weighting("Purchasing", Map.of("cost/price-per-1000", 1.0)),
            new Weighting(
                "Quality",
                new WeightsBy.SwingPoints(Map.of("barrier/otr", 100.0, "barrier/wvtr", 62.5))),
            new Weighting(
                "Owner", new WeightsBy.RankOrder(List.of("cost/price-per-1000", "barrier/otr")))),
        "Purchasing",
        Map.of("barrier/otr", ValueFunction.logarithmic(0.01, 1, 10, 0)),
        List.of(new Limit("barrier/wvtr", Limit.Bound.AT_MOST, 0.5, "agreed with quality")),
        Map.of("cost", Map.of("margin", 0.15)),
        2026,
        List.of(),
        List.of(),
        Optional.of(SamplePlants.mill()),
        new Results(
            List.of(
                new MaterialResult(
                    "ldpe",
                    Double.NaN,
                    new Measurement(
                        "o2-permeability",
                        220000,
                        "cm3.um/(m2.day.bar)",
                        1.2,
                        3,
                        "ASTM D3985",
                        "2026-05-04",
                        ""))),
            List.of(
                new CandidateResult(
                    usual.get(1),
                    new Measurement(
                        "barrier/wvtr", 0.3, "g/(m2.day)", 1.1, 5, "ASTM F1249", "", "trial")))),
        List.of(new Remark(usual.get(1), "Purchasing", "2026-05-11", "Ask for a second source.")),
        new Decision(usual.get(1).toString(), "Good enough."),
        "Ask for a trial reel – “soon”.");
  }

  private static Option option(Structure structure, int from, int to) {
    return new Option(structure.layers().subList(from, to));
  }

  /** The readable one for 0, else a random one. */
  static Study of(long seed) {
    return seed == 0 ? sugar() : random(seed);
  }

  /** A study that the seed makes: any of the briefs, random layers, weights and settings. */
  static Study random(long seed) {
    Random random = new Random(seed);
    List<Position> positions = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(5); i++) {
      positions.add(new Position("Place " + i, List.of(Option.NOTHING, randomOption(random))));
    }
    Map<String, Double> weights = new TreeMap<>();
    Map<String, Double> settings = new TreeMap<>();
    for (int i = 0; i < random.nextInt(6); i++) {
      weights.put("plugin/criterion-" + i, random.nextDouble() * Math.pow(10, i - 3));
      settings.put("setting-" + i, random.nextGaussian() * Math.pow(10, 3 * i - 6));
    }
    return new Study(
        "Study " + seed,
        "",
        randomBrief(random),
        positions,
        NeighbourRules.standard().subList(0, random.nextInt(5)),
        RandomStructures.structure(seed),
        List.of(new Measurement("a/b", 1 + random.nextDouble(), "", 1, 1, "by eye", "", "")),
        List.of(
            new Weighting("General", weights),
            new Weighting("Swings", swings(random)),
            new Weighting("Order", order(weights.keySet(), random))),
        "General",
        Map.of(
            "plugin/criterion-1", ValueFunction.linear(random.nextGaussian() - 9, 0, 1 / 3.0, 1)),
        List.of(new Limit("a/b", Limit.Bound.AT_LEAST, random.nextGaussian(), "")),
        Map.of("plugin", settings),
        random.nextInt(),
        List.of(SampleStructures.library().require(SampleStructures.BARE_FILM)),
        List.of(),
        random.nextBoolean() ? Optional.of(SamplePlants.mill()) : Optional.empty(),
        Results.NONE,
        List.of(),
        Decision.OPEN,
        "\"quoted\"\n\ttabbed \\ \u2028 µ");
  }

  private static WeightsBy swings(Random random) {
    Map<String, Double> points = new TreeMap<>();
    for (int i = 0; i < random.nextInt(4); i++) {
      points.put("plugin/criterion-" + i, random.nextDouble() * 100);
    }
    return new WeightsBy.SwingPoints(points);
  }

  private static WeightsBy order(Set<String> criteria, Random random) {
    List<String> shuffled = new ArrayList<>(criteria);
    Collections.shuffle(shuffled, random);
    return new WeightsBy.RankOrder(shuffled);
  }

  private static Brief randomBrief(Random random) {
    List<Brief> briefs = SampleBriefs.all();
    List<Climate> climates = SampleClimates.all();
    Handling[] handlings = Handling.values();
    Climate climate = climates.get(random.nextInt(climates.size()));
    Handling handling = handlings[random.nextInt(handlings.length)];
    return briefs.get(random.nextInt(briefs.size())).in(climate).handled(handling);
  }

  private static Option randomOption(Random random) {
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      layers.add(RandomStructures.layer(random));
    }
    return new Option(layers);
  }
}
