package plyworth.workbench.desktop.position;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.structure.AmountUnit;
import plyworth.workbench.desktop.word.Language;

/** Gauges and grammages as they are typed. */
class AmountsTest {

  @BeforeEach
  void speakEnglish() {
    Language.ENGLISH.speak();
  }

  @Test
  void theLastUnitIsThatOfAllBeforeIt() {
    assertThat(Amounts.read("12, 15; 20um"))
        .containsExactly(
            new Amounts.Amount(12, AmountUnit.UM),
            new Amounts.Amount(15, AmountUnit.UM),
            new Amounts.Amount(20, AmountUnit.UM));
  }

  @Test
  void eachMayHaveAUnitOfItsOwn() {
    assertThat(Amounts.read("12 µm, 40, 50 g/m²"))
        .containsExactly(
            new Amounts.Amount(12, AmountUnit.UM),
            new Amounts.Amount(40, AmountUnit.GSM),
            new Amounts.Amount(50, AmountUnit.GSM));
  }

  @Test
  void whatIsTypedTwiceStandsOnce() {
    assertThat(Amounts.read("12, 12 um")).hasSize(1);
  }

  /** International inch, 25.4 mm; avoirdupois pound, 0.453 592 37 kg; foot, 0.3048 m. */
  @ParameterizedTest
  @CsvSource({"1 mil, 25.4, UM", "48 gauge, 12.192, UM", "10 lb/3000ft2, 16.2747, GSM"})
  void americanUnitsAreConverted(String typed, double figure, AmountUnit unit) {
    Amounts.Amount amount = Amounts.read(typed).get(0);
    assertThat(amount.figure()).isCloseTo(figure, within(1e-4));
    assertThat(amount.unit()).isEqualTo(unit);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "' '|How much?",
        "12|has no unit",
        "12 cm|\"cm\" is not a unit of a layer",
        "12,5 um|write 12.5 with a point",
        "twelve um|\"twelve\" is not a number",
        "0 um|not more than 0",
        "-3 um|not more than 0",
        "12 um and 3|is not a number",
        "12,, 15 um|is not a number"
      })
  void whatIsWrongIsSaidWithWhatWouldBeRight(String typed, String answer) {
    assertThatThrownBy(() -> Amounts.read(typed))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(answer);
  }
}
