package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.jgrapht.alg.shortestpath.AllDirectedPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.CompiledGraph;

/** The graph of random studies against every combination of options written down and checked. */
class CandidateGraphAgainstBruteForceTest {

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  private static CandidateGraph graph(RandomStudy study) {
    return CandidateGraph.of(
        study.positions(), study.rules(), SmallLibrary.MATERIALS, SmallLibrary.PROCESSES);
  }

  private static List<List<Layer>> enumerated(CompiledGraph graph) {
    return LongStream.range(0, graph.count()).mapToObj(p -> graph.structure(p).layers()).toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyAllowedLayerListIsOnePathAndNoOtherIs(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    Set<List<Layer>> expected = new BruteForce(study.positions(), study.rules()).candidates();
    CandidateGraph graph = graph(study);
    assertThat(enumerated(graph.compile())).containsExactlyInAnyOrderElementsOf(expected);
    assertThat(graph.count()).isEqualTo(BigInteger.valueOf(expected.size()));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void candidatesComeInStudyOrderOfTheirLayersShorterFirst(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    List<Layer> firstSeen = firstSeen(study);
    List<List<Layer>> sorted =
        new ArrayList<>(new BruteForce(study.positions(), study.rules()).candidates());
    sorted.sort(
        Comparator.comparing(
            list -> list.stream().map(l -> letter(firstSeen, l)).reduce("", String::concat)));
    assertThat(enumerated(graph(study).compile())).isEqualTo(sorted);
  }

  private static List<Layer> firstSeen(RandomStudy study) {
    return study.positions().stream()
        .flatMap(p -> p.options().stream())
        .flatMap(o -> o.layers().stream())
        .distinct()
        .toList();
  }

  private static String letter(List<Layer> firstSeen, Layer layer) {
    return String.valueOf((char) ('a' + firstSeen.indexOf(layer)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyNumberDecodesToAStructureThatEncodesToIt(long seed) {
    CompiledGraph graph = graph(RandomStudy.of(seed)).compile();
    for (long path = 0; path < graph.count(); path++) {
      assertThat(graph.pathOf(graph.structure(path))).hasValue(path);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void optionsAreCountedByTheCandidatesThatCanBeSpelledWithThem(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    List<List<BigInteger>> counts = graph(study).optionCounts();
    BruteForce slow = new BruteForce(study.positions(), study.rules());
    for (int p = 0; p < study.positions().size(); p++) {
      List<Option> options = study.positions().get(p).options();
      for (int o = 0; o < options.size(); o++) {
        assertThat(counts.get(p).get(o))
            .as("position %d option %d", p, o)
            .isEqualTo(BigInteger.valueOf(slow.candidatesWith(p, options.get(o)).size()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nodesKnowTheSlotsOfEverySpelling(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    CandidateGraph graph = graph(study);
    CompiledGraph compiled = graph.compile();
    Map<Integer, Set<Slot>> expected = new TreeMap<>();
    new BruteForce(study.positions(), study.rules())
        .spellings()
        .forEach(
            (slots, layers) -> {
              long path = compiled.pathOf(new Structure(layers)).orElseThrow();
              int[] nodes = compiled.nodesOf(path);
              for (int i = 0; i < nodes.length; i++) {
                expected.computeIfAbsent(nodes[i], n -> new HashSet<>()).add(slots.get(i));
              }
            });
    List<List<Slot>> found = graph.slots();
    assertThat(found).hasSize(compiled.nodes());
    assertThat(found.get(0)).isEmpty();
    for (int node = 1; node < compiled.nodes(); node++) {
      assertThat(found.get(node)).containsExactlyInAnyOrderElementsOf(expected.get(node));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyBrokenRuleObjectsAndNoOther(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    BruteForce slow = new BruteForce(study.positions(), List.of());
    for (List<Layer> list : slow.candidates()) {
      Set<String> broken = new TreeSet<>();
      study.rules().stream().filter(r -> slow.broken(r, list)).forEach(r -> broken.add(r.id()));
      assertThat(objections(study, list)).as("%s", list).isEqualTo(broken);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aStructureIsOnOfferExactlyWhenNothingObjects(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    CompiledGraph graph = graph(study).compile();
    Random random = new Random(seed);
    for (int i = 0; i < 50; i++) {
      List<Layer> list = new ArrayList<>();
      int length = 1 + random.nextInt(4);
      while (list.size() < length) {
        list.add(SmallLibrary.LAYERS.get(random.nextInt(SmallLibrary.LAYERS.size())));
      }
      assertThat(objections(study, list).isEmpty())
          .as("%s", list)
          .isEqualTo(graph.pathOf(new Structure(list)).isPresent());
    }
  }

  /** Ids of the rules that object; the empty id stands for the positions. */
  private static Set<String> objections(RandomStudy study, List<Layer> list) {
    Set<String> ids = new TreeSet<>();
    Objections.of(
            new Structure(list),
            study.positions(),
            study.rules(),
            SmallLibrary.MATERIALS,
            SmallLibrary.PROCESSES)
        .forEach(objection -> ids.add(objection.rule()));
    return ids;
  }

  @Test
  void aGraphLibraryFindsAsManyPaths() {
    long paths = 0;
    for (long seed = 0; seed < 100; seed++) {
      CandidateGraph graph = graph(RandomStudy.of(seed));
      Set<CandidateNode> ending = new HashSet<>(graph.nodes());
      ending.removeIf(node -> !node.ends());
      int found =
          new AllDirectedPaths<>(graph.graph())
              .getAllPaths(Set.of(graph.outside()), ending, true, null)
              .size();
      assertThat(graph.count()).as("seed %d", seed).isEqualTo(BigInteger.valueOf(found));
      paths += found;
    }
    assertThat(paths).isGreaterThan(500);
  }
}
