package plyworth.workbench.command.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;

/** The products whose sorption is known, and that a study takes what they say. */
class ProductsCommandTest {

  @TempDir Path folder;

  @Test
  void everyProductIsListedWithItsConstantsCriticalPointAndSources() {
    CommandLineRun run = CommandLineRun.of("products");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("Products at 25 °C")
        .contains("GAB isotherm, monolayer 0.0616 g/g", "critical water activity 0.37")
        .contains("{ \"form\": \"product\", \"product\": \"skim-milk-powder\" }")
        .contains("[from memory, J. Food Eng. 68 (2005) 257")
        .contains("black-pepper", "isotherm not known: measure it");
  }

  /** Deliquescence of sodium chloride at 38 °C: published fit of saturated salt solutions. */
  @Test
  void constantsAreThoseOfTheTemperatureAskedFor() {
    CommandLineRun run = CommandLineRun.of("products", "--at", "38", "--format", "json");
    assertThat(run.text("products", 1, "id")).isEqualTo("table-salt");
    assertThat(run.number("products", 1, "constants", "deliquescence_activity"))
        .isCloseTo(0.750940, withinPercentage(0.001));
    assertThat(run.number("temperature_C")).isEqualTo(38);
  }

  @Test
  void whatIsListedCanBeWrittenIntoAStudy() throws IOException {
    String isotherm = "{ \"form\": \"product\", \"product\": \"seasoning-powder\" }";
    assertThat(CommandLineRun.of("products").out()).contains(isotherm);
    Path study = BrothStudy.in(folder, withIsotherm(isotherm));
    assertThat(CommandLineRun.of("check", study).code()).isZero();
    assertThat(CommandLineRun.of("rank", study).code()).isZero();
  }

  @Test
  void aProductThatIsNotKnownIsRefusedWithItsPlace() throws IOException {
    Path misspelt =
        BrothStudy.in(folder, withIsotherm("{ \"form\": \"product\", \"product\": \"wafr\" }"));
    assertThat(CommandLineRun.of("check", misspelt).err())
        .contains("at brief.product.moisture.isotherm.product", "Did you mean \"wafer\"?");
    Path unknown =
        BrothStudy.in(
            folder, withIsotherm("{ \"form\": \"product\", \"product\": \"garlic-powder\" }"));
    assertThat(CommandLineRun.of("check", unknown).err())
        .contains("how the product \"garlic-powder\" holds water is not known", "was measured");
  }

  @Test
  void aTemperatureOutsideTheWorldIsRefused() {
    CommandLineRun run = CommandLineRun.of("products", "--at", "300");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("between -40 and 70 °C");
  }

  private static String withIsotherm(String isotherm) {
    return BrothStudy.with("{ \"form\": \"linear\", \"slope_g_per_g\": 0.12 }", isotherm);
  }
}
