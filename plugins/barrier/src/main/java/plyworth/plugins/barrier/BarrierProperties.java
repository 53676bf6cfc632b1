package plyworth.plugins.barrier;

import java.util.List;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.PropertyDefinition.Along;

/** The material properties that are read. */
final class BarrierProperties {

  private BarrierProperties() {}

  static List<PropertyDefinition> all() {
    return List.of(
        new PropertyDefinition(
            Permeant.OXYGEN.permeabilityId(),
            "cm3.um/(m2.day.bar)",
            "Oxygen permeability at 23 °C, per bar of oxygen; at 50 % RH unless the humidity factor"
                + " says otherwise.",
            Along.NOTHING,
            0,
            1e8),
        new PropertyDefinition(
            Permeant.OXYGEN.rateId(),
            "cm3/(m2.day.bar)",
            "Oxygen transmission rate at 23 °C of a flat layer taken as a whole.",
            Along.GAUGE,
            0,
            1e8),
        new PropertyDefinition(
            Permeant.OXYGEN.activationId(),
            "kJ/mol",
            "Activation energy of the oxygen permeability per unit of partial pressure.",
            Along.NOTHING,
            -50,
            150),
        new PropertyDefinition(
            LayerTransmission.HUMIDITY_FACTOR,
            "1",
            "Oxygen permeability at a relative humidity over the tabulated one.",
            Along.HUMIDITY,
            1e-3,
            1e5),
        new PropertyDefinition(
            Permeant.WATER.permeabilityId(),
            "g.um/(m2.day)",
            "Water vapour permeability at 38 °C, 90 % RH against none.",
            Along.NOTHING,
            0,
            1e8),
        new PropertyDefinition(
            Permeant.WATER.rateId(),
            "g/(m2.day)",
            "Water vapour transmission rate at 38 °C, 90 % RH of a flat layer taken as a whole.",
            Along.GAUGE,
            0,
            1e5),
        new PropertyDefinition(
            Permeant.WATER.activationId(),
            "kJ/mol",
            "Activation energy of the water permeability per unit of vapour pressure; the vapour"
                + " pressure itself is not in it.",
            Along.NOTHING,
            -50,
            150),
        new PropertyDefinition(
            Permeant.ALCOHOL.permeabilityId(),
            "g.mm/(m2.day)",
            "Isopropanol permeability near room temperature, from saturated vapour into none.",
            Along.NOTHING,
            0,
            1e6),
        new PropertyDefinition(
            Permeant.ALCOHOL.rateId(),
            "g/(m2.day)",
            "Isopropanol transmission rate near room temperature of a flat layer taken as a whole,"
                + " from saturated vapour into none.",
            Along.GAUGE,
            0,
            1e6),
        new PropertyDefinition(
            Permeant.ALCOHOL.diffusivityId(),
            "um2/s",
            "Diffusion coefficient of isopropanol near room temperature.",
            Along.NOTHING,
            1e-9,
            1e6),
        new PropertyDefinition(
            Permeant.ETHANOL.diffusivityId(),
            "um2/s",
            "Diffusion coefficient of ethanol near room temperature.",
            Along.NOTHING,
            1e-9,
            1e6),
        new PropertyDefinition(
            Permeant.ETHANOL.permeabilityId(),
            "g.mm/(m2.day)",
            "Ethanol permeability near room temperature, from saturated vapour into none.",
            Along.NOTHING,
            0,
            1e6),
        new PropertyDefinition(
            Permeant.ETHANOL.rateId(),
            "g/(m2.day)",
            "Ethanol transmission rate near room temperature of a flat layer taken as a whole, from"
                + " saturated vapour into none.",
            Along.GAUGE,
            0,
            1e6),
        new PropertyDefinition(
            LayerTransmission.PINHOLES,
            "1/m2",
            "Pinholes seen over a light table, ASTM B926 or EN 546-4.",
            Along.GAUGE,
            0,
            1e5));
  }
}
