package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A published table of recommended treatment levels for flexo and gravure. */
class WettingTest {

  @ParameterizedTest
  @CsvSource({
    "polyethylene, 36, WATER, false, NONE",
    "polyethylene, 36, CURED, false, NONE",
    "polyethylene, 36, SOLVENT, false, NORMAL",
    "polyethylene, 36, WATER, true, CONDITIONAL",
    "polyethylene, 36, CURED, true, CONDITIONAL",
    "polyethylene, 35, WATER, true, NONE",
    "polypropylene, 38, WATER, false, NORMAL",
    "polypropylene, 38, CURED, true, CONDITIONAL",
    "polypropylene, 38, CURED, false, NONE",
    "polyester, 43, WATER, true, CONDITIONAL",
    "polyester, 43, SOLVENT, false, NORMAL",
    "polyester, 52, WATER, false, NORMAL",
    "polyester, 52, SOLVENT, false, NORMAL",
    "polyester, 52, CURED, false, NORMAL"
  })
  void levelAgainstTheLeastOfTheTable(
      String family, double level, InkKind kind, boolean corona, Verdict expected) {
    double required = Surface.of(Set.of(family), false).required(kind);
    assertThat(Wetting.judge(level, required, Double.NaN, corona)).isEqualTo(expected);
  }

  /** Trade association notes of 2018 and 2019: ten above the surface tension of the ink. */
  @ParameterizedTest
  @CsvSource({"40, 36, CONDITIONAL", "46, 36, NORMAL", "NaN, 36, UNKNOWN"})
  void tableMetButTooLittleAboveTheInkIsConditional(double level, double ink, Verdict expected) {
    double required = Surface.of(Set.of("polyethylene"), false).required(InkKind.WATER);
    assertThat(Wetting.judge(level, required, ink, false)).isEqualTo(expected);
  }
}
