package plyworth.plugins.machinability;

import java.util.List;
import plyworth.shared.material.Material;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.Text;

/** What the plugin reads: material properties and parameters. */
final class Inputs {

  static final String MODULUS = "modulus-md";
  static final String CONDUCTIVITY = "conductivity";
  static final String HEAT_CAPACITY = "heat-capacity";
  static final String SEAL_INITIATION = "seal-initiation";
  static final String UPPER_SEAL_LIMIT = "upper-seal-limit";
  static final String JAW_FACE_LIMIT = "jaw-face-limit";

  /** The properties that conduction needs. */
  static final List<String> THERMAL = List.of(CONDUCTIVITY, HEAT_CAPACITY);

  static final List<PropertyDefinition> PROPERTIES =
      List.of(
          property(Material.DENSITY, "kg/m3", "Density.", 1, 25_000),
          property(MODULUS, "MPa", "Modulus of elasticity in machine direction.", 0, 500_000),
          property(CONDUCTIVITY, "W/(m.K)", "Thermal conductivity across the layer.", 0.001, 500),
          property(HEAT_CAPACITY, "J/(kg.K)", "Specific heat, fusion left out.", 100, 10_000),
          property(
              SEAL_INITIATION,
              "degC",
              "Interface temperature at which the seal reaches about 2 N/15 mm.",
              -50,
              400),
          property(
              UPPER_SEAL_LIMIT,
              "degC",
              "Interface temperature above which the sealant thins, strings or degrades.",
              -50,
              500),
          property(
              JAW_FACE_LIMIT,
              "degC",
              "Hottest jaw face the material bears on the outside.",
              -50,
              800));

  static final List<Parameter> PARAMETERS =
      List.of(
          parameter("start-temperature", "degC", 23, 0, 40),
          parameter("seal-margin", "K", 5, 0, 30),
          parameter("fusion-heat", "kJ/kg", 0, 0, 300),
          parameter("least-sealant", "um", 8, 0, 100),
          parameter("same-way-lap", "1", 0, 0, 1));

  private Inputs() {}

  private static PropertyDefinition property(
      String id, String unit, String meaning, double lowest, double highest) {
    return new PropertyDefinition(id, unit, meaning, Along.NOTHING, lowest, highest);
  }

  private static Parameter parameter(
      String id, String unit, double standard, double lowest, double highest) {
    String key = "parameter." + id;
    return new Parameter(id, Text.of(key), unit, standard, lowest, highest, Text.of(key + ".help"));
  }
}
