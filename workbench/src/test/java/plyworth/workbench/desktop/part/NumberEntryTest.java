package plyworth.workbench.desktop.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as people type them. */
class NumberEntryTest {

  @Test
  void groupsOfDigitsMayBeSetApart() {
    assertThat(NumberEntry.of(" 12\u202f345.5 ")).hasValue(12_345.5);
    assertThat(NumberEntry.whole("1 000")).hasValue(1000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "12,5", "ten", "NaN", "1d", "Infinity"})
  void whatIsNoNumberIsNone(String text) {
    assertThat(NumberEntry.of(text)).isEmpty();
    assertThat(NumberEntry.whole(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.18, 1000, 1e-7, 12_345.678, -3})
  void whatIsWrittenReadsTheSame(double number) {
    assertThat(NumberEntry.of(NumberEntry.text(number))).hasValue(number);
  }
}
