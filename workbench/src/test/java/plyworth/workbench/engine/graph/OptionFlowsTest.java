package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.LongBinaryOperator;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.workbench.engine.CompiledGraph;

/** Flows between options against every spelling of every candidate written down. */
class OptionFlowsTest {

  private static final Comparator<List<Slot>> OUTERMOST_FIRST =
      (a, b) -> {
        for (int i = 0; i < a.size(); i++) {
          int order = a.get(i).position() - b.get(i).position();
          order = order == 0 ? a.get(i).option() - b.get(i).option() : order;
          if (order != 0) {
            return order;
          }
        }
        return 0;
      };

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  private static CandidateGraph graph(RandomStudy study) {
    return CandidateGraph.of(
        study.positions(), study.rules(), SmallLibrary.MATERIALS, SmallLibrary.PROCESSES);
  }

  /** The option of each position in the spelling that counts, of every candidate. */
  private static Map<List<Layer>, int[]> counting(RandomStudy study) {
    Map<List<Layer>, List<Slot>> first = new HashMap<>();
    new BruteForce(study.positions(), study.rules())
        .spellings()
        .forEach(
            (slots, layers) ->
                first.merge(layers, slots, (a, b) -> OUTERMOST_FIRST.compare(a, b) <= 0 ? a : b));
    Map<List<Layer>, int[]> taken = new HashMap<>();
    first.forEach((layers, slots) -> taken.put(layers, options(study, slots)));
    return taken;
  }

  private static int[] options(RandomStudy study, List<Slot> slots) {
    int[] options =
        study.positions().stream().mapToInt(p -> p.options().indexOf(Option.NOTHING)).toArray();
    slots.forEach(slot -> options[slot.position()] = slot.option());
    return options;
  }

  private static void assertFlows(OptionFlows flows, List<int[]> counted) {
    assertThat(flows.candidates()).isEqualTo(counted.size());
    for (int p = 0; p < flows.positions(); p++) {
      for (int o = 0; o < flows.options(p); o++) {
        assertThat(flows.through(p, o)).isEqualTo(count(counted, uses(p, o)));
        for (int n = 0; p + 1 < flows.positions() && n < flows.options(p + 1); n++) {
          assertThat(flows.between(p, o, n))
              .isEqualTo(count(counted, uses(p, o).and(uses(p + 1, n))));
        }
      }
    }
  }

  private static Predicate<int[]> uses(int position, int option) {
    return taken -> taken[position] == option;
  }

  private static long count(List<int[]> counted, Predicate<int[]> wanted) {
    return counted.stream().filter(wanted).count();
  }

  private static LongBinaryOperator some(BitSet paths) {
    return (from, to) -> paths.get((int) from, (int) to).cardinality();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyCandidateRunsThroughTheOptionsOfItsOutermostSpelling(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    assertFlows(graph(study).flows(OptionFlows.EVERY), List.copyOf(counting(study).values()));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void candidatesThatAreLeftOutRunThroughNothing(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    CandidateGraph graph = graph(study);
    BitSet paths = drawn(graph, seed);
    assertFlows(graph.flows(some(paths)), kept(study, graph.compile(), paths));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatRunsThroughSomeOptionsIsToldFromTheRest(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    CandidateGraph graph = graph(study);
    BitSet paths = drawn(graph, seed);
    Random random = new Random(seed);
    int position = random.nextInt(study.positions().size());
    int option = random.nextInt(study.positions().get(position).options().size());
    List<int[]> through = new ArrayList<>(kept(study, graph.compile(), paths));
    through.removeIf(uses(position, option).negate());
    assertFlows(graph.flows(some(paths), position, Set.of(option)), through);
  }

  /** Whole runs and single ones, so that both ways of counting meet. */
  private static BitSet drawn(CandidateGraph graph, long seed) {
    Random random = new Random(seed);
    BitSet paths = new BitSet();
    int count = graph.count().intValueExact();
    for (int from = 0; from < count; ) {
      int to = Math.min(count, from + 1 + random.nextInt(1 + random.nextInt(12)));
      paths.set(from, to, random.nextBoolean());
      from = to;
    }
    return paths;
  }

  private static List<int[]> kept(RandomStudy study, CompiledGraph graph, BitSet paths) {
    Map<List<Layer>, int[]> counting = counting(study);
    return paths.stream().mapToObj(p -> counting.get(graph.structure(p).layers())).toList();
  }

  @Test
  void whatIsSpelledTwiceCountsAtTheOuterPosition() {
    Option glue = SmallLibrary.only(Layer.grams("glue", 2, "glue-bond"));
    Option film = SmallLibrary.only(Layer.web("foil", 20));
    var bond = SmallLibrary.position("bond", Option.NOTHING, glue);
    var inner = SmallLibrary.position("inner bond", Option.NOTHING, glue);
    OptionFlows flows =
        SmallLibrary.graph(List.of(SmallLibrary.position("outer", film), bond, inner))
            .flows(OptionFlows.EVERY);
    assertThat(flows.candidates()).isEqualTo(3);
    assertThat(flows.through(1, 1)).isEqualTo(2);
    assertThat(flows.through(2, 1)).isEqualTo(1);
    assertThat(flows.between(1, 0, 1)).isZero();
    assertThat(flows.between(1, 1, 1)).isEqualTo(1);
  }
}
