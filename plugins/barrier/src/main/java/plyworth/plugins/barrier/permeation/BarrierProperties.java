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
            alcohol(Permeant.ALCOHOL),
            alcohol(Permeant.ETHANOL),
            Stream.of(
                new PropertyDefinition(
                    LayerTransmission.PINHOLES,
                    "1/m2",
                    meaning(LayerTransmission.PINHOLES),
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
            meaning(Permeant.OXYGEN.permeabilityId()),
            Along.NOTHING,
            1e-4,
            1e9),
        new PropertyDefinition(
            Permeant.OXYGEN.rateId(),
            "cm3/(m2.day.bar)",
            meaning(Permeant.OXYGEN.rateId()),
            Along.GAUGE,
            0,
            1e8),
        activation(Permeant.OXYGEN),
        new PropertyDefinition(
            HumidityCurves.OXYGEN_FACTOR,
            "1",
            meaning(HumidityCurves.OXYGEN_FACTOR),
            Along.HUMIDITY,
            1e-3,
            1e5));
  }

  private static Stream<PropertyDefinition> water() {
    return Stream.of(
        new PropertyDefinition(
            Permeant.WATER.permeabilityId(),
            "g.um/(m2.day)",
            meaning(Permeant.WATER.permeabilityId()),
            Along.NOTHING,
            1e-3,
            1e8),
        new PropertyDefinition(
            Permeant.WATER.rateId(),
            "g/(m2.day)",
            meaning(Permeant.WATER.rateId()),
            Along.GAUGE,
            0,
            1e5),
        activation(Permeant.WATER),
        new PropertyDefinition(
            HumidityCurves.WATER_FACTOR,
            "1",
            meaning(HumidityCurves.WATER_FACTOR),
            Along.HUMIDITY,
            1e-3,
            1e5));
  }

  private static PropertyDefinition activation(Permeant permeant) {
    return new PropertyDefinition(
        permeant.activationId(),
        "kJ/mol",
        meaning(permeant.activationId()),
        Along.NOTHING,
        LOWEST_ACTIVATION,
        HIGHEST_ACTIVATION);
  }

  private static Stream<PropertyDefinition> alcohol(Permeant permeant) {
    return Stream.of(
        new PropertyDefinition(
            permeant.permeabilityId(),
            "g.mm/(m2.day)",
            meaning(permeant.permeabilityId()),
            Along.NOTHING,
            1e-9,
            2e5),
        new PropertyDefinition(
            permeant.rateId(), "g/(m2.day)", meaning(permeant.rateId()), Along.GAUGE, 0, 1e6),
        new PropertyDefinition(
            permeant.diffusivityId(),
            "um2/s",
            meaning(permeant.diffusivityId()),
            Along.NOTHING,
            1e-9,
            1e7));
  }

  /** The key of the sentence that says what a property is. */
  private static String meaning(String property) {
    return "property." + property;
  }
}
