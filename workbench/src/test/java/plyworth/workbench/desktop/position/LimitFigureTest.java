package plyworth.workbench.desktop.position;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.workbench.desktop.word.Language;

/** Figures of limits as they are typed. */
class LimitFigureTest {

  private static final String RATE = "cm3/(m2.day.bar)";

  @BeforeEach
  void speakEnglish() {
    Language.ENGLISH.speak();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.5", " 0.5 cm3/(m2.day.bar)", "0.5 cm³/(m²·day·bar)"})
  void theUnitOfTheCriterionMayStandBehindOrNot(String typed) {
    assertThat(LimitFigure.read(typed, RATE)).isEqualTo(0.5);
  }

  /** 100 in² is 0.064516 m², a standard atmosphere 1.01325 bar: 0.1 / 0.064516 / 1.01325. */
  @Test
  void aUnitOfTheSameKindIsConverted() {
    assertThat(LimitFigure.read("0.1 cm3/(100in2.day.atm)", RATE)).isCloseTo(1.52974, within(1e-5));
  }

  @Test
  void aUnitOfAnotherKindIsRefusedWithThoseThatWouldDo() {
    assertThatThrownBy(() -> LimitFigure.read("12 um", RATE))
        .hasMessageContaining("\"um\" is not a unit of this criterion")
        .hasMessageContaining(RATE)
        .hasMessageContaining("cm3/(100in2.day.atm)");
    assertThatThrownBy(() -> LimitFigure.read("12 um", "EUR")).hasMessageContaining("EUR");
    assertThatThrownBy(() -> LimitFigure.read("12 um", "")).hasMessageContaining("pure number");
  }

  @ParameterizedTest
  @ValueSource(strings = {"cheap", "1,5", "NaN", "Infinity"})
  void whatIsNoNumberIsRefused(String typed) {
    assertThatThrownBy(() -> LimitFigure.read(typed, "EUR"))
        .hasMessageContaining("\"" + typed + "\" is not a number");
  }

  @Test
  void nothingTypedAsksForTheFigureInItsUnit() {
    assertThatThrownBy(() -> LimitFigure.read(" ", "EUR")).hasMessageContaining("its unit is EUR");
  }
}
