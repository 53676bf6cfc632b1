package plyworth.workbench.host;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.workbench.host.Scale.Trouble;

class ScaleTest {

  private static final Scale POUNDS = Scale.of("EUR/kg", true);

  /** By the definitions of the pound, the inch and the degree Fahrenheit. */
  @ParameterizedTest
  @CsvSource({
    "EUR/kg, true, 1, 2.204622",
    "EUR/kg, true, 1 EUR/kg, 1",
    "EUR/kg, false, 1 EUR/lb, 2.204622",
    "degC, true, 212, 100",
    "degC, false, 212 °F, 100",
    "degC, false, 212 degF, 100",
    "um, true, 0.5, 12.7",
    "um, true, 12 µm, 12",
    "kg/m3, false, 0.92 g/cm3, 920",
    "g.mm/(m2.day), true, 1 g·mil/(100in²·day), 0.3937008",
    "%, true, 12.5 %, 12.5",
    "1, false, -0.5, -0.5"
  })
  void numbersAreReadInTheUnitShownOrWithTheirOwn(
      String kept, boolean customary, String typed, double figure) {
    Scale.Reading read = Scale.of(kept, customary).read(typed);
    assertThat(read.trouble()).isEqualTo(Trouble.NONE);
    assertThat(read.figure()).isCloseTo(figure, within(1e-6 * Math.abs(figure)));
  }

  @ParameterizedTest
  @CsvSource({
    "'', EMPTY",
    "cheap, NO_NUMBER",
    "'1,5', NO_NUMBER",
    "NaN, NO_NUMBER",
    "1e999, NO_NUMBER",
    "1.5d, NO_NUMBER",
    "1.5 mil, OTHER_UNIT",
    "1.5 florins, OTHER_UNIT"
  })
  void whatIsNoFigureSaysWhy(String typed, Trouble trouble) {
    assertThat(POUNDS.read(typed).trouble()).isEqualTo(trouble);
  }

  @Test
  void aFieldShowsEveryDigitThatIsKeptAndSevenThatAreConverted() {
    assertThat(Scale.of("EUR/kg", false).typed(1.123456789012)).isEqualTo("1.123456789012");
    assertThat(POUNDS.typed(1)).isEqualTo("0.4535924");
    assertThat(POUNDS.typed(Double.NaN)).isEmpty();
    assertThat(Scale.of("degC", true).typed(100)).isEqualTo("212");
    assertThat(POUNDS.symbols()).containsExactly("EUR/kg", "EUR/lb");
  }
}
