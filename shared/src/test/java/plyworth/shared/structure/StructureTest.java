package plyworth.shared.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class StructureTest {

  private static final Layer PAPER = Layer.grams("kraft-paper", 50, "");
  private static final Layer FOIL = Layer.web("aluminium-foil", 7);

  @Test
  void outsideComesFirst() {
    Structure structure = Structure.of(PAPER, FOIL);
    assertThat(structure.outermost()).isEqualTo(PAPER);
    assertThat(structure.innermost()).isEqualTo(FOIL);
    assertThat(structure).hasToString("kraft-paper 50 g/m2 / aluminium-foil 7 um");
  }

  @Test
  void nothingIsNoStructure() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Structure(List.of()));
  }

  @Test
  void gaugeAndGrammageGoTogetherByDensity() {
    assertThat(FOIL.grammage(2700)).isCloseTo(18.9, within(1e-12));
    assertThat(PAPER.gaugeUm(800)).isCloseTo(62.5, within(1e-12));
    assertThat(FOIL.gaugeUm(2700)).isEqualTo(7);
    assertThat(PAPER.grammage(800)).isEqualTo(50);
  }

  @Test
  void optionSaysNothingOrItsLayers() {
    assertThat(Option.NOTHING).hasToString("nothing");
    assertThat(Option.of(PAPER, FOIL)).hasToString("kraft-paper 50 g/m2 / aluminium-foil 7 um");
  }

  @Test
  void positionNeedsOptionsNoTwoAlike() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Position("Barrier", List.of()))
        .withMessageContaining("\"Barrier\" has no option");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Position("Barrier", List.of(Option.of(FOIL), Option.of(FOIL))))
        .withMessageContaining("twice");
  }
}
