package plyworth.workbench.desktop.word;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units as people write them. */
class UnitTextTest {

  @ParameterizedTest
  @CsvSource({
    "cm3.um/(m2.day.bar), cm³·µm/(m²·day·bar)",
    "g/(m2.day), g/(m²·day)",
    "kg/1000m2, kg/1000m²",
    "W/(m.K), W/(m·K)",
    "N.mm, N·mm",
    "kg/m3, kg/m³",
    "ldpe 12.5 um @extrusion-coating, ldpe 12.5 µm @extrusion-coating",
    "common practice. Measure it, common practice. Measure it"
  })
  void plainSpellingIsRaisedAndDotted(String plain, String shown) {
    assertThat(UnitText.of(plain)).isEqualTo(shown);
  }

  @Test
  void whatIsCountedHasItsNameInEachLanguage() {
    Language.CHINESE.speak();
    try {
      assertThat(UnitText.of("days")).isEqualTo("天");
      assertThat(UnitText.of("mg/(pack.day)")).isEqualTo("mg/(包·day)");
      assertThat(UnitText.of("packs/min")).isEqualTo("包/min");
      assertThat(UnitText.of("stored for days")).isEqualTo("stored for days");
    } finally {
      Language.ENGLISH.speak();
    }
  }
}
