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
          property(Material.DENSITY, "kg/m3", 1, 25_000),
          property(MODULUS, "MPa", 0, 500_000),
          property(CONDUCTIVITY, "W/(m.K)", 0.001, 500),
          property(HEAT_CAPACITY, "J/(kg.K)", 100, 10_000),
          property(SEAL_INITIATION, "degC", -50, 400),
          property(UPPER_SEAL_LIMIT, "degC", -50, 500),
          property(JAW_FACE_LIMIT, "degC", -50, 800));

  static final List<Parameter> PARAMETERS =
      List.of(
          parameter("start-temperature", "degC", 23, 0, 40),
          parameter("seal-margin", "K", 5, 0, 30),
          parameter("fusion-heat", "kJ/kg", 0, 0, 300),
          parameter("least-sealant", "um", 8, 0, 100),
          parameter("same-way-lap", "1", 0, 0, 1));

  private Inputs() {}

  private static PropertyDefinition property(
      String id, String unit, double lowest, double highest) {
    return new PropertyDefinition(id, unit, "property." + id, Along.NOTHING, lowest, highest);
  }

  private static Parameter parameter(
      String id, String unit, double standard, double lowest, double highest) {
    String key = "parameter." + id;
    return new Parameter(id, Text.of(key), unit, standard, lowest, highest, Text.of(key + ".help"));
  }
}
