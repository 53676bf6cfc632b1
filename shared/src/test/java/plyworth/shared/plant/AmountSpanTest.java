package plyworth.shared.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.structure.Layer;

class AmountSpanTest {

  private static final double POLYESTER = 1400;

  @ParameterizedTest
  @ValueSource(strings = {"12 um", "6.35 um", "35 to 120 g/m2"})
  void whatIsReadIsWrittenAgain(String text) {
    assertThat(AmountSpan.read(text)).hasToString(text);
  }

  @Test
  void otherUnitsAreKeptInTheUnitsInside() {
    assertThat(AmountSpan.read("0.5 mil")).hasToString("12.7 um");
    assertThat(AmountSpan.read("50 gauge").from()).isEqualTo(12.7);
  }

  @ParameterizedTest
  @ValueSource(strings = {"12", "12 m", "um 12", "12 um 15", "12 - 15 um", "many um"})
  void whatIsNoAmountIsRefusedWithAnExample(String text) {
    assertThatThrownBy(() -> AmountSpan.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(text)
        .hasMessageContaining("35 to 120 g/m2");
  }

  @ParameterizedTest
  @ValueSource(strings = {"15 to 12 um", "0 um", "-3 um"})
  void anEmptyOrNegativeSpanIsRefused(String text) {
    assertThatThrownBy(() -> AmountSpan.read(text)).hasMessageContaining("the smaller first");
  }

  @ParameterizedTest
  @CsvSource({"12 um, true", "12.1 um, true", "12.2 um, false", "16.8 g/m2, true", "15 um, false"})
  void aGaugeMayDifferByRoundingAlone(String span, boolean holds) {
    assertThat(AmountSpan.read(span).holds(Layer.web("bopet", 12), POLYESTER)).isEqualTo(holds);
  }

  @Test
  void aLayerIsHeldAgainstSpansInTheUnitItIsStatedIn() {
    List<AmountSpan> press = List.of(AmountSpan.read("12 to 60 um"), AmountSpan.read("60 g/m2"));
    assertThat(AmountSpan.anyHolds(press, Layer.grams("kraft-paper", 40, ""), 800)).isFalse();
    assertThat(AmountSpan.anyHolds(press, Layer.web("bopp", 50), 910)).isTrue();
    assertThat(AmountSpan.anyHolds(press.subList(0, 1), Layer.grams("kraft-paper", 40, ""), 800))
        .as("50 µm, since no grammage is named")
        .isTrue();
    assertThat(AmountSpan.anyHolds(List.of(), Layer.web("bopp", 500), 910)).isTrue();
  }
}
