package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static plyworth.workbench.engine.graph.SmallLibrary.COAT;
import static plyworth.workbench.engine.graph.SmallLibrary.FILM;
import static plyworth.workbench.engine.graph.SmallLibrary.FOIL;
import static plyworth.workbench.engine.graph.SmallLibrary.INK;
import static plyworth.workbench.engine.graph.SmallLibrary.PAPER;
import static plyworth.workbench.engine.graph.SmallLibrary.TIE;
import static plyworth.workbench.engine.graph.SmallLibrary.graph;
import static plyworth.workbench.engine.graph.SmallLibrary.only;
import static plyworth.workbench.engine.graph.SmallLibrary.position;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import plyworth.shared.structure.KindExpression;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.CompiledGraph;

class CandidateGraphTest {

  /** A full product: so many positions of so many webs each, no gauge twice. */
  private static List<Position> product(int positions, int webs) {
    List<Position> product = new ArrayList<>();
    for (int p = 0; p < positions; p++) {
      List<Option> options = new ArrayList<>();
      for (int o = 0; o < webs; o++) {
        options.add(only(Layer.web("resin", 100 * p + o + 1)));
      }
      product.add(new Position("web " + p, options));
    }
    return product;
  }

  @Test
  void theSameLaminateIsCountedOnceHoweverItsAbsentLayersAreSpelled() {
    CandidateGraph graph =
        graph(
            List.of(
                position("outer", only(PAPER)),
                position("tie", only(TIE), Option.NOTHING),
                position("tie again", Option.NOTHING, only(TIE)),
                position("inner", only(FILM))));
    assertThat(graph.count()).isEqualTo(3);
    assertThat(graph.compile().pathOf(Structure.of(PAPER, TIE, FILM))).isPresent();
  }

  @Test
  void anOptionOfSeveralLayersIsTheSameAsTheLayersOneByOne() {
    CandidateGraph graph =
        graph(
            List.of(
                position("web", only(PAPER, TIE), only(PAPER)),
                position("rest", only(FILM), only(TIE, FILM))));
    assertThat(graph.count()).isEqualTo(3);
    assertThat(graph.optionCounts())
        .isEqualTo(
            List.of(
                List.of(BigInteger.TWO, BigInteger.TWO), List.of(BigInteger.TWO, BigInteger.TWO)));
  }

  @Test
  void anEmptyStackIsNoCandidate() {
    CandidateGraph graph =
        graph(List.of(position("web", Option.NOTHING, only(PAPER)), position("b", Option.NOTHING)));
    assertThat(graph.count()).isEqualTo(1);
    assertThat(graph.optionCounts().get(0)).containsExactly(BigInteger.ZERO, BigInteger.ONE);
    assertThat(graph(List.of()).count()).isZero();
  }

  @Test
  void rulesThatLeaveNothingLeaveAnEmptyGraph() {
    CandidateGraph graph =
        graph(product(2, 3), new NeighbourRule.AtMost("none", kind("web"), 0, "why", "test"));
    assertThat(graph.count()).isZero();
    assertThat(graph.nodes()).hasSize(1);
    assertThat(graph.compile().count()).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> graph.sample(1, 1));
  }

  @Test
  void optionsThatNoRuleTellsApartShareTheirNodes() {
    CandidateGraph graph = graph(product(6, 12));
    // (L-1)K² + K edges and K^L paths: counting
    assertThat(graph.nodes()).hasSize(1 + 6 * 12);
    assertThat(graph.compile().edges()).isEqualTo(5 * 144 + 12);
    assertThat(graph.count()).isEqualTo(2_985_984);
  }

  @Test
  void moreCandidatesThanFitALongAreStillCountedExactly() {
    CandidateGraph graph = graph(product(20, 10));
    assertThat(graph.count()).isEqualTo(BigInteger.TEN.pow(20));
    assertThat(graph.optionCounts().get(7)).containsOnly(BigInteger.TEN.pow(19));
    assertThat(graph.sample(3, 1)).allSatisfy(s -> assertThat(s.layers()).hasSize(20));
    assertThatIllegalArgumentException()
        .isThrownBy(graph::compile)
        .withMessageContaining("too many to number; take options out of the positions");
  }

  @Test
  void theFlatFormKeepsNodesOrderAndCounts() {
    CandidateGraph graph =
        graph(
            List.of(
                position("print", only(INK), Option.NOTHING),
                position("web", only(FOIL), only(PAPER)),
                position("inside", Option.NOTHING, only(COAT), only(TIE, FILM))));
    CompiledGraph flat = graph.compile();
    for (CandidateNode node : graph.nodes()) {
      assertThat(flat.layer(node.number())).isEqualTo(node.layer());
      assertThat(flat.completions(node.number())).isEqualTo(node.completions().longValueExact());
    }
    assertThat(flat.structure(0)).isEqualTo(Structure.of(INK, FOIL));
    assertThat(flat.structure(1)).isEqualTo(Structure.of(INK, FOIL, COAT));
    assertThat(flat.structure(11)).isEqualTo(Structure.of(PAPER, TIE, FILM));
  }

  @Test
  void theSameStudyGivesTheSameGraph() {
    RandomStudy study = RandomStudy.of(7);
    CompiledGraph one = of(study).compile();
    CompiledGraph two = of(study).compile();
    assertThat(two.nodes()).isEqualTo(one.nodes());
    for (int edge = 0; edge < one.edges(); edge++) {
      assertThat(two.edgeTo(edge)).isEqualTo(one.edgeTo(edge));
    }
  }

  @Test
  void anUnknownMaterialIsNamedWithItsPosition() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> graph(List.of(position("Barrier", only(Layer.web("fiol", 7))))))
        .withMessageContaining("at the position \"Barrier\"")
        .withMessageContaining("in the layer \"fiol 7 um\"")
        .withMessageContaining("foil");
  }

  @Test
  void tooManyStatesAreRefusedWithAWayOut() {
    LayerAlphabet alphabet = new LayerAlphabet(SmallLibrary.MATERIALS, SmallLibrary.PROCESSES);
    List<Position> positions = product(5, 5);
    alphabet.addAll(positions);
    GraphBuilder builder =
        new GraphBuilder(
            new PositionAutomaton(positions, alphabet),
            new RuleAutomaton(List.of(), alphabet),
            20,
            () -> false);
    assertThatIllegalArgumentException()
        .isThrownBy(builder::build)
        .withMessageContaining("more than 20 states")
        .withMessageContaining("take options out");
  }

  @Test
  void buildingStopsWhenCancelled() {
    AtomicInteger asked = new AtomicInteger();
    assertThatThrownBy(
            () ->
                CandidateGraph.of(
                    product(6, 6),
                    List.of(),
                    SmallLibrary.MATERIALS,
                    SmallLibrary.PROCESSES,
                    () -> asked.incrementAndGet() > 10))
        .isInstanceOf(CancellationException.class);
    assertThat(asked).hasValue(11);
  }

  @Test
  void buildingStopsWhenTheThreadIsInterrupted() {
    Thread.currentThread().interrupt();
    try {
      assertThatThrownBy(() -> graph(product(2, 2))).isInstanceOf(CancellationException.class);
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
  }

  private static CandidateGraph of(RandomStudy study) {
    return CandidateGraph.of(
        study.positions(), study.rules(), SmallLibrary.MATERIALS, SmallLibrary.PROCESSES);
  }

  private static KindExpression kind(String text) {
    return new KindExpression(text);
  }
}
