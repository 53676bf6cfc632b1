package plyworth.shared.store;

import java.util.List;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.data.Spelling;

/** Sorption isotherms, told apart by {@code form}. */
final class IsothermCodec {

  private static final List<String> FORMS = List.of("linear", "gab", "deliquescent");

  private IsothermCodec() {}

  static Isotherm read(Fields fields) {
    String form = fields.text("form");
    return switch (form) {
      case "linear" -> new Isotherm.Linear(fields.number("slope_g_per_g"));
      case "gab" ->
          new Isotherm.Gab(
              fields.number("monolayer_g_per_g"), fields.number("C"), fields.number("k"));
      case "deliquescent" ->
          new Isotherm.Deliquescent(
              fields.number("deliquescence_activity"), fields.number("allowed_uptake_g_per_g"));
      default ->
          throw new DataException(
              fields.value("form").place(),
              "\"" + form + "\" is not a form of isotherm",
              Spelling.suggestion(form, FORMS));
    };
  }

  static Json write(Isotherm isotherm) {
    Entries entries = new Entries();
    if (isotherm instanceof Isotherm.Linear linear) {
      entries.put("form", "linear").put("slope_g_per_g", linear.slope());
    } else if (isotherm instanceof Isotherm.Gab gab) {
      entries.put("form", "gab").put("monolayer_g_per_g", gab.m0());
      entries.put("C", gab.c()).put("k", gab.k());
    } else if (isotherm instanceof Isotherm.Deliquescent crystals) {
      entries.put("form", "deliquescent");
      entries.put("deliquescence_activity", crystals.deliquescence());
      entries.put("allowed_uptake_g_per_g", crystals.allowedUptake());
    }
    return entries.json();
  }
}
