package plyworth.plugins.cost;

import java.util.List;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.Text;

/** The numbers that a user may set. */
final class Parameters {

  static final String MARGIN = "margin";
  static final String FREIGHT = "freight";
  static final String PACKS_PER_MINUTE = "packs-per-minute";

  static final List<Parameter> ALL =
      List.of(
          parameter(MARGIN, "1", 0.18, 0, 0.9),
          parameter(FREIGHT, "EUR/kg", 0.12, 0, 10),
          parameter(PACKS_PER_MINUTE, "packs/min", 50, 1, 2000));

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
