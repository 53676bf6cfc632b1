package plyworth.shared.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.data.DataException;

/** Known products against the figures that their constants were published or recalled with. */
class ProductLibraryTest {

  private static KnownProduct product(String id) {
    return ProductLibrary.standard().find(id).orElseThrow();
  }

  /** GAB constants from memory, as J. Food Eng. 68 (2005) 257: C 36.86, k 0.7244; 31.25, 0.7494. */
  @ParameterizedTest
  @CsvSource({"25, 36.86, 0.7244", "30, 31.25, 0.7494"})
  void skimMilkPowderHoldsLessWaterTheWarmerItIs(double celsius, double c, double k) {
    Isotherm.Gab gab = (Isotherm.Gab) product("skim-milk-powder").at(celsius);
    assertThat(gab.m0()).isEqualTo(0.06156);
    assertThat(gab.c()).isCloseTo(c, withinPercentage(0.1));
    assertThat(gab.k()).isCloseTo(k, withinPercentage(0.05));
  }

  /** The same at 30 °C with rounded constants m0 0.0616, C 31.4, k 0.750 (from memory). */
  @ParameterizedTest
  @CsvSource({
    "0.10, 0.047814",
    "0.20, 0.061391",
    "0.30, 0.071627",
    "0.40, 0.081913",
    "0.60, 0.107804"
  })
  void skimMilkPowderTakesUpWaterAsItsRoundedConstantsSay(double activity, double moisture) {
    assertThat(new Isotherm.Gab(0.0616, 31.4, 0.750).moisture(activity))
        .isCloseTo(moisture, withinPercentage(0.01));
    assertThat(product("skim-milk-powder").at(30).moisture(activity))
        .isCloseTo(moisture, withinPercentage(0.3));
  }

  /** Deliquescence of sodium chloride: published fit of saturated salt solutions. */
  @ParameterizedTest
  @CsvSource({"25, 0.753376", "30, 0.752413", "38, 0.750940"})
  void saltDeliquescesAtItsSaturatedSolution(double celsius, double activity) {
    Isotherm.Deliquescent salt = (Isotherm.Deliquescent) product("table-salt").at(celsius);
    assertThat(salt.deliquescence()).isCloseTo(activity, offset(1e-5));
    assertThat(salt.moisture(0.75)).isZero();
    assertThat(product("table-salt").criticalActivity(celsius)).isEqualTo(salt.deliquescence());
  }

  /** Fat holds no water (milk powders of different fat content, 2016, abstract). */
  @Test
  void wholeMilkPowderHoldsWhatItsFatFreePartHolds() {
    double share = product("whole-milk-powder").figure("sorbing-share").typical();
    assertThat(share).isEqualTo(0.73);
    for (double a = 0.1; a < 0.7; a += 0.1) {
      assertThat(product("whole-milk-powder").at(25).moisture(a))
          .isCloseTo(share * product("skim-milk-powder").at(25).moisture(a), offset(1e-12));
    }
  }

  /** Moistures 2.20 % at 0.191 and 5.51 % at 0.516 (coffee blends, published, abstract). */
  @Test
  void roastedCoffeeTakesUpWhatItsPublishedSpanSays() {
    Isotherm coffee = product("roasted-ground-coffee").at(25);
    assertThat(coffee.moisture(0.516) - coffee.moisture(0.191))
        .isCloseTo(0.0551 - 0.0220, withinPercentage(0.5));
  }

  /** 6.8 g of water per 100 g of lactose at its glass transition (Lait 82 (2002) 475, abstract). */
  @Test
  void amorphousLactoseHoldsItsCriticalMoistureAtItsCriticalActivity() {
    KnownProduct lactose = product("amorphous-lactose");
    assertThat(lactose.at(25).moisture(lactose.criticalActivity(25)))
        .isCloseTo(0.068, withinPercentage(5));
  }

  @Test
  void criticalMoistureIsTurnedIntoAnActivityByTheIsotherm() {
    KnownProduct coffee = product("instant-coffee");
    assertThat(coffee.at(25).moisture(coffee.criticalActivity(25))).isCloseTo(0.075, offset(1e-9));
    assertThat(product("black-pepper").criticalActivity(25)).isNaN();
  }

  @Test
  void whatIsNotKnownIsNotMadeUp() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> product("garlic-powder").at(25))
        .withMessageContaining("garlic-powder");
    assertThat(product("garlic-powder").criticalActivity(25)).isEqualTo(0.4);
  }

  @Test
  void anIsothermIsNotUsedBeyondWhatItHoldsFor() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new MoistureLimit(product("amorphous-lactose"), 10, 0.1, 0.6))
        .withMessageContaining("up to a water activity of 0.4");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tea,Tea,lineer,|is not a form of sorption",
        "tea,Tea,gab,|do not fit its form",
        "te,Tea,linear,|do not fit its form"
      })
  void aTableThatDoesNotFitIsRefused(String line, String problem) {
    String figures =
        "product,figure,at,low,typical,high,unit,kind,source\n"
            + "tea,slope,,0.1,0.1,0.1,g/g,memory,from memory\n";
    assertThatThrownBy(() -> ProductLibrary.read("id,name,form,note\n" + line + "\n", figures))
        .isInstanceOf(DataException.class)
        .hasMessageContaining(problem)
        .hasMessageContaining("products.csv, line 2");
  }
}
