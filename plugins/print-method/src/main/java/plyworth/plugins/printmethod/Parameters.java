package plyworth.plugins.printmethod;

import java.util.List;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.Text;

/** The numbers a user may set. */
final class Parameters {

  static final String ABATEMENT = "abatement";
  static final String CAPTURE = "capture";
  static final String DESTRUCTION = "destruction";
  static final String RETAINED = "retained";
  static final String CONCENTRATION = "running-concentration";
  static final String HUMIDITY_RISE = "humidity-rise";
  static final String AIR_RISE = "air-rise";
  static final String WEB_RISE = "web-rise";
  static final String DRYER_EFFICIENCY = "dryer-efficiency";
  static final String LAMP_POWER = "lamp-power";
  static final String CORONA = "in-line-corona";
  static final String TREATED = "treated-webs";
  static final String RESIDUAL_LIMIT = "residual-limit";
  static final String THINNER = "thinner";
  static final String CHAMBER = "oxidiser-chamber";
  static final String RECOVERY = "oxidiser-recovery";

  static final List<Parameter> ALL =
      List.of(
          parameter(ABATEMENT, "", 1, 0, 2),
          parameter(CAPTURE, "", 0.95, 0, 1),
          parameter(DESTRUCTION, "", 0.98, 0, 1),
          parameter(RETAINED, "", 0, 0, 1),
          parameter(CONCENTRATION, "g/m3", 4, 0.5, 40),
          parameter(HUMIDITY_RISE, "kg/kg", 0.025, 0.005, 0.1),
          parameter(AIR_RISE, "K", 50, 10, 150),
          parameter(WEB_RISE, "K", 30, 0, 100),
          parameter(DRYER_EFFICIENCY, "", 0.7, 0.3, 1),
          parameter(LAMP_POWER, "W/cm", 160, 20, 400),
          parameter(CORONA, "", 1, 0, 1),
          parameter(TREATED, "", 1, 0, 1),
          parameter(RESIDUAL_LIMIT, "mg/m2", 5, 0.1, 100),
          parameter(THINNER, "kg/kg", 0.3, 0, 1),
          parameter(CHAMBER, "degC", 820, 650, 950),
          parameter(RECOVERY, "", 0.95, 0, 0.98));

  private Parameters() {}

  private static Parameter parameter(
      String id, String unit, double standard, double lowest, double highest) {
    return new Parameter(
        id,
        Text.of("parameter." + id),
        unit,
        standard,
        lowest,
        highest,
        Text.of("parameter." + id + ".help"));
  }
}
