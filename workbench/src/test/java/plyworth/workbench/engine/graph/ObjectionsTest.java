package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static plyworth.workbench.engine.graph.SmallLibrary.COAT;
import static plyworth.workbench.engine.graph.SmallLibrary.FILM;
import static plyworth.workbench.engine.graph.SmallLibrary.FOIL;
import static plyworth.workbench.engine.graph.SmallLibrary.GLUE;
import static plyworth.workbench.engine.graph.SmallLibrary.INK;
import static plyworth.workbench.engine.graph.SmallLibrary.PAPER;
import static plyworth.workbench.engine.graph.SmallLibrary.PRIMER;
import static plyworth.workbench.engine.graph.SmallLibrary.TIE;
import static plyworth.workbench.engine.graph.SmallLibrary.only;
import static plyworth.workbench.engine.graph.SmallLibrary.position;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.structure.KindExpression;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.Objection;

class ObjectionsTest {

  private static final List<Position> POSITIONS =
      List.of(
          position("web", only(PAPER), only(FOIL)),
          position("joint", only(GLUE), only(TIE)),
          position("inside", only(FOIL, TIE, FILM), only(FILM)));

  private static final NeighbourRule ONE_FOIL =
      new NeighbourRule.AtMost("one-foil", kind("foil"), 1, "One foil, not two.", "practice");
  private static final NeighbourRule NO_GLUE =
      new NeighbourRule.WebBondWeb(
          "no-glue", kind("web"), kind("@glue-bond"), kind("foil"), "It soaks in.", "practice");
  private static final NeighbourRule SEALS =
      new NeighbourRule.Innermost("seals", kind("sealable"), "It must seal.", "practice");

  private static KindExpression kind(String text) {
    return new KindExpression(text);
  }

  private static List<Objection> objections(Layer... layers) {
    return Objections.of(
        Structure.of(layers),
        POSITIONS,
        List.of(ONE_FOIL, NO_GLUE, SEALS),
        SmallLibrary.MATERIALS,
        SmallLibrary.PROCESSES);
  }

  @Test
  void nothingObjectsToACandidate() {
    assertThat(objections(PAPER, TIE, FOIL, TIE, FILM)).isEmpty();
  }

  @Test
  void aBrokenRuleIsNamedWithItsReasonItsSourceAndItsLayers() {
    assertThat(objections(FOIL, TIE, FOIL, TIE, FILM))
        .containsExactly(
            new Objection("one-foil", "One foil, not two.", "practice", List.of(0, 2)));
  }

  @Test
  void allBrokenRulesAreNamed() {
    assertThat(objections(FOIL, GLUE, FOIL, TIE, FILM))
        .extracting(Objection::rule)
        .containsExactly("one-foil", "no-glue");
  }

  @Test
  void aJointIsNamedByItsWebsAndBondsWithoutWhatIsLookedThrough() {
    Objection objection =
        objections(PAPER, PRIMER, GLUE, FOIL, TIE, FILM).stream()
            .filter(o -> o.rule().equals("no-glue"))
            .findFirst()
            .orElseThrow();
    assertThat(objection.layers()).containsExactly(0, 2, 3);
    assertThat(objection.layersOf(Structure.of(PAPER, PRIMER, GLUE, FOIL, TIE, FILM)))
        .isEqualTo("paper 60 um / glue 2 g/m2 @glue-bond / foil 7 um");
  }

  @Test
  void aLayerThatNoPositionOffersIsNamedWithWhatCouldStandThere() {
    assertThat(objections(PAPER, PRIMER, FILM))
        .containsExactly(
            new Objection(
                "",
                "no position offers primer 0.5 g/m2 @priming after paper 60 um,"
                    + " only glue 2 g/m2 @glue-bond or resin 12 um @melt-bond",
                "",
                List.of(1)));
  }

  @Test
  void anOutermostLayerThatNoPositionOffersIsNamed() {
    assertThat(objections(INK, FILM).get(0).reason())
        .startsWith("no position offers ink 1.5 g/m2 @flexo outermost, only paper 60 um or foil");
  }

  @Test
  void aLayerTooManyIsNamed() {
    assertThat(objections(PAPER, TIE, FILM, COAT))
        .containsExactly(
            new Objection("", "no position offers anything after resin 30 um", "", List.of(3)));
  }

  @Test
  void whatIsMissingAtTheInsideIsNamed() {
    assertThat(objections(PAPER, GLUE))
        .extracting(Objection::reason)
        .containsExactly(
            "the structure stops short: inside it must follow foil 7 um or resin 30 um",
            "It must seal.");
  }

  @Test
  void aStructureOfAnUnknownMaterialIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> objections(Layer.web("papier", 60)))
        .withMessageContaining("in the layer \"papier 60 um\"");
  }
}
