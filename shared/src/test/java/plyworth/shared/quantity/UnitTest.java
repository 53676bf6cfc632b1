package plyworth.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.shared.structure.Layer;

class UnitTest {

  /**
   * Rates that converters publish per 100 in² (comparison table of unconverted barrier materials,
   * name withheld), converted by the international inch and the standard atmosphere alone.
   */
  @ParameterizedTest
  @CsvSource({
    "O2_RATE_US, 4.5, 68.8380",
    "O2_RATE_US, 0.1, 1.52973",
    "WV_RATE_US, 0.05, 0.775002",
    "WV_RATE_US, 1.5, 23.2500"
  })
  void ratesPerHundredSquareInches(Unit unit, double number, double inside) {
    assertThat(unit.toInside(number)).isCloseTo(inside, withinPercentage(1e-3));
  }

  /**
   * A laminate of 48 ga polyester, 7 lb tie, 0.35 mil foil, 7 lb tie and 2.5 mil sealant, given as
   * 4.35 mil in all (Packaging World, Packaging technology on display, part two). Ream of 3000 ft²
   * and density 920 kg/m³ are assumed.
   */
  @Test
  void gaugesAndReamsOfAPublishedLaminateAddUp() {
    double tieGsm = Unit.LB_PER_3000FT2.toInside(7);
    assertThat(tieGsm).isCloseTo(11.3923, withinPercentage(1e-3));
    double tie = Layer.grams("ldpe", tieGsm, "").gaugeUm(920);
    double total =
        Unit.HUNDREDTH_MIL.toInside(48)
            + tie
            + Unit.MIL.toInside(0.35)
            + tie
            + Unit.MIL.toInside(2.5);
    assertThat(total).isCloseTo(109.348, withinPercentage(0.01));
    assertThat(Unit.MIL.fromInside(total)).isCloseTo(4.35, withinPercentage(1.5));
  }

  /**
   * Low-density polyethylene at 300 to 600 cc·mil/(100 in²·day·atm) (Biosystems Engineering,
   * chapter 11 Food Package Engineering, Table 11.2, p. 345), converted.
   */
  @Test
  void oxygenPermeabilityPerMil() {
    assertThat(Unit.O2_PERMEABILITY_US.toInside(1)).isCloseTo(388.552, withinPercentage(0.01));
    assertThat(Unit.O2_PERMEABILITY_US.toInside(300)).isCloseTo(116_566, withinPercentage(0.01));
    assertThat(Unit.O2_PERMEABILITY_US.toInside(600)).isCloseTo(233_131, withinPercentage(0.01));
  }

  /**
   * Polylactide at 0.26 Barrer and 30 °C (Gas permeation properties of poly(lactic acid) revisited,
   * abstract), converted by the conventional millimetre of mercury.
   */
  @Test
  void oxygenPermeabilityInBarrer() {
    assertThat(Unit.BARRER.toInside(1)).isCloseTo(64_805.3, withinPercentage(0.01));
    assertThat(Unit.BARRER.toInside(0.26)).isCloseTo(16_849, withinPercentage(0.01));
  }

  /**
   * Polylactide at 2 to 12 times 10⁻¹⁸ kg·m/(m²·s·Pa) of oxygen (Journal of Applied Polymer Science
   * 92 (2004) 1790, abstract), at 1.427592 mg per cm³(STP).
   */
  @Test
  void oxygenPermeabilityByMassAndMetre() {
    Unit unit = Unit.O2_PERMEABILITY_SI;
    assertThat(unit.toInside(1e-18)).isCloseTo(6052.1, withinPercentage(0.01));
    assertThat(unit.toInside(2e-18)).isCloseTo(12_104, withinPercentage(0.01));
    assertThat(unit.toInside(12e-18)).isCloseTo(72_625, withinPercentage(0.01));
  }

  /** By the international inch alone; a US perm is 57.2135 ng/(s·m²·Pa) (from memory). */
  @Test
  void waterPermeabilityPerMilAndPermeanceInPerms() {
    assertThat(Unit.WV_PERMEABILITY_US.toInside(1)).isCloseTo(393.701, withinPercentage(0.01));
    assertThat(Unit.PERM_US.toInside(1)).isCloseTo(4.94325e-3, withinPercentage(0.01));
    assertThat(Unit.PERM_US.toInside(1)).isCloseTo(57.2135e-9 * 86_400, withinPercentage(0.01));
  }

  @ParameterizedTest
  @EnumSource
  void thereAndBackIsTheSame(Unit unit) {
    assertThat(unit.fromInside(unit.toInside(3.7))).isCloseTo(3.7, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource
  void everyUnitIsFoundByItsSymbolAndItsPlainSpelling(Unit unit) {
    assertThat(Unit.named(unit.symbol())).contains(unit);
    assertThat(Unit.named(unit.plain())).contains(unit);
  }

  @Test
  void bothMicroSignsAreRead() {
    assertThat(Unit.named("\u03bcm")).contains(Unit.UM);
    assertThat(Unit.named("\u00b5m")).contains(Unit.UM);
    assertThat(Unit.named("furlong")).isEmpty();
  }

  /**
   * Conversion factors of NIST Special Publication 811 (2008), appendix B.8: from memory, to the
   * digits given.
   */
  @ParameterizedTest
  @CsvSource({
    "STRESS_US, 1, 0.006894757",
    "DENSITY_US, 1, 16.01846",
    "CONDUCTIVITY_US, 1, 0.1442279",
    "HEAT_CAPACITY_US, 1, 4186.8",
    "FAHRENHEIT, 212, 100",
    "FAHRENHEIT, -40, -40",
    "SURFACE_ENERGY_CGS, 38, 38"
  })
  void customaryUnitsOfMaterialData(Unit unit, double number, double inside) {
    assertThat(unit.toInside(number)).isCloseTo(inside, withinPercentage(1e-4));
  }

  @Test
  void aPriceByThePoundIsLessThanHalfOfThatByTheKilogram() {
    assertThat(Unit.PRICE.to(Unit.PRICE_US, 4)).isCloseTo(1.81437, within(1e-5));
  }

  @ParameterizedTest
  @EnumSource
  void customaryUnitMeasuresTheSame(Unit unit) {
    assertThat(unit.customary().kind()).isEqualTo(unit.kind());
    assertThat(unit.alike()).contains(unit, unit.customary());
    assertThat(unit.customary().to(unit, unit.to(unit.customary(), 7))).isCloseTo(7, within(1e-9));
  }

  @Test
  void unitsThatMeasureOtherThingsDoNotConvert() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Unit.CELSIUS.to(Unit.MIL, 1))
        .withMessageContaining("°C does not convert into mil");
  }
}
