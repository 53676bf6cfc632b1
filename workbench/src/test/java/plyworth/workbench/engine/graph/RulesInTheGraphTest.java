package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static plyworth.workbench.engine.graph.SmallLibrary.FILM;
import static plyworth.workbench.engine.graph.SmallLibrary.FOIL;
import static plyworth.workbench.engine.graph.SmallLibrary.GLUE;
import static plyworth.workbench.engine.graph.SmallLibrary.INK;
import static plyworth.workbench.engine.graph.SmallLibrary.PAPER;
import static plyworth.workbench.engine.graph.SmallLibrary.PRIMER;
import static plyworth.workbench.engine.graph.SmallLibrary.SKIN;
import static plyworth.workbench.engine.graph.SmallLibrary.TIE;
import static plyworth.workbench.engine.graph.SmallLibrary.VARNISH;
import static plyworth.workbench.engine.graph.SmallLibrary.graph;
import static plyworth.workbench.engine.graph.SmallLibrary.only;
import static plyworth.workbench.engine.graph.SmallLibrary.position;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.structure.KindExpression;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Structure;

/** What each form of rule lets through, one at a time. */
class RulesInTheGraphTest {

  private static final NeighbourRule PAPER_FOIL_APART =
      new NeighbourRule.Neighbours("apart", kind("porous"), kind("foil"), "why", "test");
  private static final NeighbourRule NO_GLUE_BETWEEN_PAPER_AND_FOIL =
      new NeighbourRule.WebBondWeb(
          "glue", kind("paper"), kind("@glue-bond"), kind("foil"), "why", "test");
  private static final NeighbourRule WEBS_NEED_A_BOND =
      new NeighbourRule.WebBondWeb("bond", kind("web"), null, kind("web"), "why", "test");

  private static KindExpression kind(String text) {
    return new KindExpression(text);
  }

  private static boolean allowed(NeighbourRule rule, Layer... layers) {
    return graph(List.of(position("all", only(layers))), rule).count().signum() > 0;
  }

  @Test
  void neighboursAreForbiddenInOneOrderOnly() {
    assertThat(allowed(PAPER_FOIL_APART, PAPER, FOIL)).isFalse();
    assertThat(allowed(PAPER_FOIL_APART, FOIL, PAPER)).isTrue();
    assertThat(allowed(PAPER_FOIL_APART, PAPER, TIE, FOIL)).isTrue();
  }

  @Test
  void theFaceIsTheTwoOutermostLayersAlone() {
    var face = new NeighbourRule.Face("face", kind("ink"), kind("film"), "why", "test");
    assertThat(allowed(face, INK, FILM)).isFalse();
    assertThat(allowed(face, VARNISH, INK, FILM)).isTrue();
    assertThat(allowed(face, INK, PAPER, TIE, FILM)).isTrue();
    assertThat(allowed(face, INK)).isTrue();
  }

  @Test
  void rulesSeeThroughAbsentOptions() {
    var positions =
        List.of(
            position("outer", only(PAPER)),
            position("bond", Option.NOTHING, only(TIE)),
            position("coat", Option.NOTHING),
            position("barrier", only(FOIL), only(FILM)));
    var graph = graph(positions, PAPER_FOIL_APART).compile();
    assertThat(graph.count()).isEqualTo(3);
    assertThat(graph.pathOf(Structure.of(PAPER, FOIL))).isEmpty();
  }

  @Test
  void aForbiddenBondIsSeenThroughPrintAndCoatings() {
    assertThat(allowed(NO_GLUE_BETWEEN_PAPER_AND_FOIL, PAPER, GLUE, FOIL)).isFalse();
    assertThat(allowed(NO_GLUE_BETWEEN_PAPER_AND_FOIL, PAPER, INK, GLUE, PRIMER, FOIL)).isFalse();
    assertThat(allowed(NO_GLUE_BETWEEN_PAPER_AND_FOIL, PAPER, TIE, FOIL)).isTrue();
    assertThat(allowed(NO_GLUE_BETWEEN_PAPER_AND_FOIL, FOIL, GLUE, PAPER)).isTrue();
  }

  @Test
  void aWebBetweenMakesTwoJoints() {
    assertThat(allowed(NO_GLUE_BETWEEN_PAPER_AND_FOIL, PAPER, GLUE, FILM, GLUE, FOIL)).isTrue();
    assertThat(allowed(NO_GLUE_BETWEEN_PAPER_AND_FOIL, PAPER, GLUE, SKIN, GLUE, FOIL)).isTrue();
  }

  @Test
  void oneForbiddenBondAmongSeveralIsEnough() {
    assertThat(allowed(NO_GLUE_BETWEEN_PAPER_AND_FOIL, PAPER, GLUE, TIE, FOIL)).isFalse();
    assertThat(allowed(NO_GLUE_BETWEEN_PAPER_AND_FOIL, PAPER, TIE, GLUE, FOIL)).isFalse();
  }

  @Test
  void websWithoutABondAreFoundBehindPrintAndCoatings() {
    assertThat(allowed(WEBS_NEED_A_BOND, PAPER, FOIL)).isFalse();
    assertThat(allowed(WEBS_NEED_A_BOND, PAPER, INK, PRIMER, FOIL)).isFalse();
    assertThat(allowed(WEBS_NEED_A_BOND, INK, PAPER, PRIMER, TIE, FOIL)).isTrue();
  }

  @Test
  void theFirstAndLastLayersAreTheOnesThatArePresent() {
    var rule = new NeighbourRule.Outermost("outside", kind("ink"), "why", "test");
    var positions =
        List.of(
            position("print", Option.NOTHING, only(INK)),
            position("web", only(PAPER), only(INK, PAPER)),
            position("inside", only(FILM), Option.NOTHING));
    assertThat(graph(positions, rule).count()).isEqualTo(4);
    var inside = new NeighbourRule.Innermost("inside", kind("sealable"), "why", "test");
    assertThat(graph(positions, rule, inside).count()).isEqualTo(2);
  }

  @Test
  void layersOfAKindAreCountedOverTheWholeStack() {
    var most = new NeighbourRule.AtMost("most", kind("web"), 2, "why", "test");
    assertThat(allowed(most, PAPER, TIE, FOIL)).isTrue();
    assertThat(allowed(most, PAPER, TIE, FOIL, TIE, FILM)).isFalse();
    var least = new NeighbourRule.AtLeast("least", kind("web"), 3, "why", "test");
    assertThat(allowed(least, PAPER, TIE, FOIL)).isFalse();
    assertThat(allowed(least, PAPER, TIE, FOIL, TIE, FILM, TIE, FILM)).isTrue();
  }
}
