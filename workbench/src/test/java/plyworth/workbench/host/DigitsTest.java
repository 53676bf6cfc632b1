package plyworth.workbench.host;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DigitsTest {

  @Test
  void peopleReadThreeSignificantDigits() {
    assertThat(Digits.sensible(0.123456)).isEqualTo("0.123");
    assertThat(Digits.sensible(12.3456)).isEqualTo("12.3");
    assertThat(Digits.sensible(123.456)).isEqualTo("123");
    assertThat(Digits.sensible(1234.56)).isEqualTo("1 235");
    assertThat(Digits.sensible(1.5e-7)).isEqualTo("1.50e-7");
    assertThat(Digits.sensible(0)).isEqualTo("0");
  }

  @Test
  void theUnknownIsADash() {
    assertThat(Digits.sensible(Double.NaN)).isEqualTo("–");
  }

  @Test
  void filesCarryNineSignificantDigits() {
    assertThat(Digits.exported(1.0 / 3)).isEqualTo(0.333333333);
    assertThat(Digits.exported(Double.NaN)).isNaN();
  }
}
