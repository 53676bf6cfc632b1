package plyworth.plugins.barrier;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.scoring.Today;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;

/**
 * As many candidates of an example study as a block holds, one option of each position drawn at
 * random; neighbour rules do not matter to the barrier.
 *
 * @param scorer the plugin, bound to the study
 * @param layerwise its layerwise form
 * @param structures the candidates
 */
record Candidates(Scorer scorer, Layerwise layerwise, List<Structure> structures) {

  /** Number of candidates. */
  static final int COUNT = 1024;

  private static final String OWN = "barrier/";

  private static final Path STUDIES = Path.of("../../studies");

  static Candidates of(String name) {
    return of(study(name));
  }

  /** The same, in a form for the criteria alone that a weighting or a limit of the study counts. */
  static Candidates counted(String name) {
    Study study = study(name);
    Stream<String> weighed =
        study.weightings().stream().flatMap(weighting -> weighting.weights().keySet().stream());
    Stream<String> limited = study.limits().stream().map(Limit::criterion);
    Set<String> counted =
        Stream.concat(weighed, limited)
            .filter(id -> id.startsWith(OWN))
            .map(id -> id.substring(OWN.length()))
            .collect(Collectors.toSet());
    Candidates all = of(study);
    return new Candidates(all.scorer, all.layerwise.only(counted), all.structures);
  }

  private static Study study(String name) {
    return StudyFile.open(STUDIES.resolve(name + StudyFile.SUFFIX)).study();
  }

  private static Candidates of(Study study) {
    Scorer scorer = new BarrierPlugin().bind(context(study));
    SplittableRandom random = new SplittableRandom(1);
    List<Structure> structures = new ArrayList<>();
    while (structures.size() < COUNT) {
      structures.add(structure(study.positions(), random));
    }
    return new Candidates(scorer, scorer.layerwise().orElseThrow(), structures);
  }

  private static ScoringContext context(Study study) {
    Map<String, Double> parameters = new TreeMap<>();
    new BarrierPlugin().parameters().forEach(p -> parameters.put(p.id(), p.standard()));
    parameters.putAll(study.settings().getOrDefault("barrier", Map.of()));
    return new ScoringContext(
        study.brief(),
        study.materialsAtHand(),
        study.processesAtHand(),
        parameters,
        Set.of(),
        Draw.TYPICAL,
        new Today(Optional.of(study.baseline()), study.measurements()));
  }

  private static Structure structure(List<Position> positions, SplittableRandom random) {
    List<Layer> layers = new ArrayList<>();
    for (Position position : positions) {
      List<Option> options = position.options();
      layers.addAll(options.get(random.nextInt(options.size())).layers());
    }
    return new Structure(layers);
  }

  /** A block with the joined states of the candidates. */
  Block block() {
    int components = StatePart.size(layerwise.state());
    int criteria = new BarrierPlugin().criteria().size();
    Block block = new Block(components, 0, criteria, 0, COUNT);
    block.size = COUNT;
    for (int i = 0; i < COUNT; i++) {
      write(state(structures.get(i)), block.states, i);
    }
    return block;
  }

  /** A block with intervals, each between the states of two candidates. */
  BoundsBlock bounds() {
    int components = StatePart.size(layerwise.state());
    int criteria = new BarrierPlugin().criteria().size();
    BoundsBlock block = new BoundsBlock(components, 0, criteria, 0, COUNT);
    block.size = COUNT;
    for (int i = 0; i < COUNT; i++) {
      double[] one = state(structures.get(i));
      double[] other = state(structures.get((i + 1) % COUNT));
      double[] low = new double[components];
      double[] high = new double[components];
      Arrays.setAll(low, c -> Math.min(one[c], other[c]));
      Arrays.setAll(high, c -> Math.max(one[c], other[c]));
      write(low, block.stateLow, i);
      write(high, block.stateHigh, i);
    }
    return block;
  }

  private static void write(double[] state, double[][] columns, int at) {
    for (int c = 0; c < state.length; c++) {
      columns[c][at] = state[c];
    }
  }

  private double[] state(Structure structure) {
    List<StatePart> parts = layerwise.state();
    double[] joined = neutral(parts);
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      double[] own = neutral(parts);
      layerwise.contribute(layer, outer, own);
      double[] result = new double[own.length];
      StatePart.join(parts, joined, own, result);
      joined = result;
      outer = layer;
    }
    return joined;
  }

  private static double[] neutral(List<StatePart> parts) {
    double[] state = new double[StatePart.size(parts)];
    StatePart.neutral(parts, state);
    return state;
  }
}
