package plyworth.workbench.host;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTextTest {

  @ParameterizedTest
  @CsvSource({
    "cm3/(m2.day.bar), cm³/(m²·day·bar)",
    "g.um/(m2.day), g·µm/(m²·day)",
    "N.mm, N·mm",
    "kg/1000m2, kg/1000m²",
    "kWh/1000m2, kWh/1000m²",
    "degC, °C",
    "N/15mm, N/15mm",
    "lb/3000ft2, lb/3000ft²",
    "EUR, EUR",
    "1, ''"
  })
  void unitsAreWrittenWithTheirSigns(String plain, String shown) {
    assertThat(UnitText.of(plain)).isEqualTo(shown);
  }
}
