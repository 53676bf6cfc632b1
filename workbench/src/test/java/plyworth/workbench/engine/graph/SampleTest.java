package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static plyworth.workbench.engine.graph.SmallLibrary.COAT;
import static plyworth.workbench.engine.graph.SmallLibrary.FILM;
import static plyworth.workbench.engine.graph.SmallLibrary.FOIL;
import static plyworth.workbench.engine.graph.SmallLibrary.INK;
import static plyworth.workbench.engine.graph.SmallLibrary.PAPER;
import static plyworth.workbench.engine.graph.SmallLibrary.PRIMER;
import static plyworth.workbench.engine.graph.SmallLibrary.TIE;
import static plyworth.workbench.engine.graph.SmallLibrary.graph;
import static plyworth.workbench.engine.graph.SmallLibrary.only;
import static plyworth.workbench.engine.graph.SmallLibrary.position;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.structure.KindExpression;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Option;
import plyworth.workbench.engine.CompiledGraph;

class SampleTest {

  /** Twelve candidates, unevenly spread over the branches: foil leads to fewer than paper. */
  private static CandidateGraph lopsided() {
    return graph(
        List.of(
            position("print", only(INK), Option.NOTHING),
            position("web", only(FOIL), only(PAPER)),
            position("primer", Option.NOTHING, only(PRIMER)),
            position("inside", Option.NOTHING, only(COAT), only(TIE, FILM))),
        new NeighbourRule.Neighbours(
            "bare", new KindExpression("foil"), new KindExpression("resin"), "why", "test"),
        new NeighbourRule.AtLeast("two", new KindExpression("-primer -ink"), 2, "why", "test"));
  }

  @Test
  void everyCandidateIsDrawnEquallyOften() {
    CandidateGraph graph = lopsided();
    CompiledGraph flat = graph.compile();
    int candidates = (int) flat.count();
    int draws = 1000 * candidates;
    int[] drawn = new int[candidates];
    graph.sample(draws, 20).forEach(s -> drawn[(int) flat.pathOf(s).orElseThrow()]++);
    double chiSquare = 0;
    for (int count : drawn) {
      chiSquare += (count - 1000.0) * (count - 1000.0) / 1000;
    }
    assertThat(candidates).isEqualTo(12);
    // 99.9 % point of the chi-square distribution with 11 degrees of freedom, from memory
    assertThat(chiSquare).isLessThan(31.26);
  }

  @Test
  void theSameSeedDrawsTheSameCandidates() {
    assertThat(lopsided().sample(50, 3)).isEqualTo(lopsided().sample(50, 3));
    assertThat(lopsided().sample(50, 3)).isNotEqualTo(lopsided().sample(50, 4));
  }
}
