package plyworth.shared.store;

import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.data.Place;

/** The spelling of plugin ids and of full criterion ids. Whether the plugin is loaded is open. */
final class CriterionId {

  private static final String PLUGIN = "[a-z]+(-[a-z]+)*";
  private static final String NAME = "[a-z0-9]+(-[a-z0-9]+)*";

  private CriterionId() {}

  static String read(Json json) {
    return checked(json.place(), Fields.text(json));
  }

  static String checked(Place place, String id) {
    if (!id.matches(PLUGIN + "/" + NAME)) {
      throw new DataException(
          place,
          "\"" + id + "\" is not a criterion",
          "Write plugin/criterion in lower case, for example \"barrier/otr\".");
    }
    return id;
  }

  static String checkedPlugin(Place place, String id) {
    if (!id.matches(PLUGIN)) {
      throw new DataException(
          place,
          "\"" + id + "\" is not a plugin id",
          "Write lower-case words joined by hyphens, for example \"print-method\".");
    }
    return id;
  }

  static String checkedParameter(Place place, String id) {
    if (!id.matches(NAME)) {
      throw new DataException(
          place,
          "\"" + id + "\" is not a parameter id",
          "Write lower case, digits and single hyphens.");
    }
    return id;
  }
}
