package plyworth.workbench.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

class CompiledGraphTest {

  private static final Layer PAPER = Layer.web("kraft-paper", 60);
  private static final Layer FOIL = Layer.web("aluminium-foil", 7);
  private static final Layer SEALANT = Layer.gauge("ldpe", 20, "extrusion-coating");

  /** Paper alone, paper with foil and sealant, paper with sealant, foil with sealant. */
  private static CompiledGraph four() {
    return CompiledGraph.of(
        Arrays.asList(null, PAPER, FOIL, SEALANT),
        new int[] {0, 2, 4, 5, 5},
        new int[] {1, 2, 2, 3, 3},
        new boolean[] {false, true, false, true});
  }

  @Test
  void candidatesAreNumberedDepthFirstWithTheShorterOneFirst() {
    CompiledGraph graph = four();
    assertThat(LongStream.range(0, graph.count()).mapToObj(graph::structure))
        .containsExactly(
            Structure.of(PAPER),
            Structure.of(PAPER, FOIL, SEALANT),
            Structure.of(PAPER, SEALANT),
            Structure.of(FOIL, SEALANT));
  }

  @Test
  void aCandidateIsFoundAgainByItsLayers() {
    CompiledGraph graph = four();
    for (long path = 0; path < graph.count(); path++) {
      assertThat(graph.pathOf(graph.structure(path))).hasValue(path);
    }
  }

  @Test
  void aStructureThatIsNotOnOfferHasNoNumber() {
    assertThat(four().pathOf(Structure.of(FOIL))).isEmpty();
    assertThat(four().pathOf(Structure.of(SEALANT))).isEmpty();
    assertThat(four().pathOf(Structure.of(PAPER, SEALANT, SEALANT))).isEmpty();
  }

  @Test
  void completionsCountWhatCanStillFollow() {
    CompiledGraph graph = four();
    assertThat(LongStream.of(0, 1, 2, 3).map(n -> graph.completions((int) n)).toArray())
        .containsExactly(4, 3, 1, 1);
  }

  @Test
  void numbersBeyondTheLastCandidateAreRefused() {
    assertThatThrownBy(() -> four().structure(4))
        .isInstanceOf(IndexOutOfBoundsException.class)
        .hasMessage("candidate 4 does not exist; there are 4");
    assertThatThrownBy(() -> four().structure(-1)).isInstanceOf(IndexOutOfBoundsException.class);
  }

  @Test
  void aGraphMayHoldNoCandidateAtAll() {
    assertThat(CompiledGraph.empty().count()).isZero();
    assertThat(CompiledGraph.empty().pathOf(Structure.of(PAPER))).isEmpty();
  }

  @Test
  void longCandidatesDecodeToo() {
    int length = 40;
    List<Layer> layers = new ArrayList<>();
    layers.add(null);
    int[] starts = new int[length + 2];
    int[] to = new int[length];
    boolean[] ends = new boolean[length + 1];
    for (int i = 0; i < length; i++) {
      layers.add(Layer.web("layer-" + i, 10));
      to[i] = i + 1;
      starts[i + 1] = i + 1;
    }
    starts[length + 1] = length;
    ends[length] = true;
    CompiledGraph graph = CompiledGraph.of(layers, starts, to, ends);
    assertThat(graph.structure(0).layers()).isEqualTo(layers.subList(1, length + 1));
  }

  @Test
  void moreCandidatesThanCanBeNumberedAreRefused() {
    int steps = 64;
    List<Layer> layers = new ArrayList<>();
    layers.add(null);
    int[] starts = new int[2 * steps + 2];
    List<Integer> to = new ArrayList<>();
    boolean[] ends = new boolean[2 * steps + 1];
    for (int node = 0; node <= 2 * steps; node++) {
      starts[node] = to.size();
      int next = node == 0 ? 1 : (node + 1) / 2 * 2 + 1;
      if (next < 2 * steps) {
        to.addAll(List.of(next, next + 1));
      } else {
        ends[node] = true;
      }
      layers.add(Layer.web("web-" + node % 2, 10));
    }
    starts[2 * steps + 1] = to.size();
    int[] edges = to.stream().mapToInt(i -> i).toArray();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CompiledGraph.of(layers.subList(0, ends.length), starts, edges, ends))
        .withMessageContaining("more than 9223372036854775807 candidates");
  }

  @Test
  void arraysThatDescribeNoGraphAreRefused() {
    refused("two successors", List.of(PAPER, PAPER), new int[] {0, 2, 3, 3}, 1, 2, 2);
    refused("does not lead on", List.of(PAPER, FOIL), new int[] {0, 1, 2, 2}, 1, 1);
    refused("no candidate ends", List.of(PAPER, FOIL), new int[] {0, 2, 2, 2}, 1, 2);
    refused("no edge leads", List.of(PAPER, FOIL), new int[] {0, 1, 2, 2}, 2, 2);
    refused("do not span", List.of(PAPER, FOIL), new int[] {0, 1, 1, 1}, 2, 2);
    refused("must not fall", List.of(PAPER, FOIL), new int[] {0, 2, 1, 2}, 1, 2);
    refused("one more edge start", List.of(PAPER, FOIL), new int[] {0, 1, 1}, 2);
  }

  private static void refused(String why, List<Layer> layers, int[] edgeStart, int... edgeTo) {
    List<Layer> nodes = new ArrayList<>(layers);
    nodes.add(0, null);
    boolean[] ends = {false, false, true};
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CompiledGraph.of(nodes, edgeStart, edgeTo, ends))
        .withMessageContaining(why);
  }
}
