package plyworth.plugins.barrier.permeation;

import java.util.List;
import java.util.stream.Stream;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.PropertyDefinition.Along;

/**
 * The material properties that are read, within bounds of what can be.
 *
 * <p>A rate may be zero, that of a perfect barrier; a permeability may not, since every bulk
 * material lets something through. From above, vapours are bounded by still air: a diffusion
 * coefficient of 1e7 µm²/s (2.5e7 for water) times the density of the saturated vapour, through the
 * layer's own thickness or, for a rate, the tenth of a millimetre to a millimetre. Oxygen is
 * bounded by the most open of dense polymers, about 1e4 Barrer or 6.5e8 in the unit here (from
 * memory).
 */
public final class BarrierProperties {

  private static final double LOWEST_ACTIVATION = -50;
  private static final double HIGHEST_ACTIVATION = 150;

  private BarrierProperties() {}

  /** All of them, with units and physical bounds. */
  public static List<PropertyDefinition> all() {
    return Stream.of(
            oxygen(),
            water(),
            alcohol(Permeant.ALCOHOL, "Isopropanol", "isopropanol"),
            alcohol(Permeant.ETHANOL, "Ethanol", "ethanol"),
            Stream.of(
                new PropertyDefinition(
                    LayerTransmission.PINHOLES,
                    "1/m2",
                    "Pinholes seen over a light table, ASTM B926 or EN 546-4.",
                    Along.GAUGE,
                    0,
                    1e5)))
        .flatMap(definitions -> definitions)
        .toList();
  }

  private static Stream<PropertyDefinition> oxygen() {
    return Stream.of(
        new PropertyDefinition(
            Permeant.OXYGEN.permeabilityId(),
            "cm3.um/(m2.day.bar)",
            "Oxygen permeability at 23 °C, per bar of oxygen; at 50 % RH unless the humidity factor"
                + " says otherwise.",
            Along.NOTHING,
            1e-4,
            1e9),
        new PropertyDefinition(
            Permeant.OXYGEN.rateId(),
            "cm3/(m2.day.bar)",
            "Oxygen transmission rate at 23 °C of a flat layer taken as a whole.",
            Along.GAUGE,
            0,
            1e8),
        activation(
            Permeant.OXYGEN,
            "Activation energy of the oxygen permeability per unit of partial pressure."),
        new PropertyDefinition(
            HumidityCurves.OXYGEN_FACTOR,
            "1",
            "Oxygen permeability at a relative humidity over the tabulated one.",
            Along.HUMIDITY,
            1e-3,
            1e5));
  }

  private static Stream<PropertyDefinition> water() {
    return Stream.of(
        new PropertyDefinition(
            Permeant.WATER.permeabilityId(),
            "g.um/(m2.day)",
            "Water vapour permeability at 38 °C, 90 % RH against none.",
            Along.NOTHING,
            1e-3,
            1e8),
        new PropertyDefinition(
            Permeant.WATER.rateId(),
            "g/(m2.day)",
            "Water vapour transmission rate at 38 °C, 90 % RH of a flat layer taken as a whole.",
            Along.GAUGE,
            0,
            1e5),
        activation(
            Permeant.WATER,
            "Activation energy of the water permeability per unit of vapour pressure; the vapour"
                + " pressure itself is not in it."),
        new PropertyDefinition(
            HumidityCurves.WATER_FACTOR,
            "1",
            "Water permeability at a relative humidity over that at 50 % RH; only its ratios are"
                + " used.",
            Along.HUMIDITY,
            1e-3,
            1e5));
  }

  private static PropertyDefinition activation(Permeant permeant, String help) {
    return new PropertyDefinition(
        permeant.activationId(),
        "kJ/mol",
        help,
        Along.NOTHING,
        LOWEST_ACTIVATION,
        HIGHEST_ACTIVATION);
  }

  private static Stream<PropertyDefinition> alcohol(
      Permeant permeant, String title, String inSentence) {
    return Stream.of(
        new PropertyDefinition(
            permeant.permeabilityId(),
            "g.mm/(m2.day)",
            title + " permeability near room temperature, from saturated vapour into none.",
            Along.NOTHING,
            1e-9,
            2e5),
        new PropertyDefinition(
            permeant.rateId(),
            "g/(m2.day)",
            title
                + " transmission rate near room temperature of a flat layer taken as a whole, from"
                + " saturated vapour into none.",
            Along.GAUGE,
            0,
            1e6),
        new PropertyDefinition(
            permeant.diffusivityId(),
            "um2/s",
            "Diffusion coefficient of " + inSentence + " near room temperature.",
            Along.NOTHING,
            1e-9,
            1e7));
  }
}
