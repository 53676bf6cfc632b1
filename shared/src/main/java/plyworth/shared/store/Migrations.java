package plyworth.shared.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.data.Choice;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;

/** Lifts study files of earlier schemas to the current one, step by step. */
final class Migrations {

  /** Key of the schema number, the first in every file. */
  static final String KEY = "schema";

  /** Step n lifts schema n to n + 1. */
  private static final List<UnaryOperator<Json.Obj>> STEPS =
      List.of(
          Migrations::nameTheWeighting,
          Migrations::shipThePack,
          Migrations::seedTheDraws,
          Migrations::stateWeightsByNumbers,
          Migrations::sayWhichWayItSpoils,
          Migrations::sayNothingOfAPlant);

  /** The schema that is written. */
  static final int CURRENT = STEPS.size();

  private Migrations() {}

  /**
   * The study in the current schema.
   *
   * @throws DataException when the schema number is missing, malformed or newer than this program
   */
  static Json lift(Json json) {
    Fields fields = Fields.of(json);
    int schema = fields.whole(KEY);
    if (schema < 0 || schema > CURRENT) {
      throw new DataException(
          fields.value(KEY).place(),
          "the file has schema " + schema + "; this program reads 0 to " + CURRENT,
          schema > CURRENT ? "Open it with a newer version of Plyworth." : "Mend the number.");
    }
    Json.Obj lifted = (Json.Obj) json;
    for (UnaryOperator<Json.Obj> step : STEPS.subList(schema, CURRENT)) {
      lifted = step.apply(lifted);
    }
    return with(lifted, KEY, new Json.Num(fields.value(KEY).place(), CURRENT));
  }

  /** Schema 0 knew one set of weights without a name. */
  private static Json.Obj nameTheWeighting(Json.Obj study) {
    String name = "General";
    Json weights = Fields.of(study).value("weights");
    Map<String, Json> weighting = new LinkedHashMap<>();
    weighting.put("name", new Json.Text(weights.place(), name));
    weighting.put("weights", weights);
    Json.Obj named = new Json.Obj(weights.place(), weighting);
    Json.Obj lifted = with(study, "weightings", new Json.Arr(weights.place(), List.of(named)));
    return without(with(lifted, "weighting", new Json.Text(weights.place(), name)), "weights");
  }

  /** Schema 1 knew no handling and no measurements. */
  private static Json.Obj shipThePack(Json.Obj study) {
    Json brief = Fields.of(study).value("brief");
    Map<String, Json> shipped = new LinkedHashMap<>(Fields.entries(brief));
    shipped.putIfAbsent("handling", new Json.Text(brief.place(), "shipped"));
    Map<String, Json> lifted = new LinkedHashMap<>(study.entries());
    lifted.put("brief", new Json.Obj(brief.place(), shipped));
    lifted.putIfAbsent("measurements", new Json.Arr(study.place(), List.of()));
    return new Json.Obj(study.place(), lifted);
  }

  /** Schema 2 knew no seed; draws began at 1. */
  private static Json.Obj seedTheDraws(Json.Obj study) {
    return with(study, "seed", new Json.Num(study.place(), 1));
  }

  /** Schema 3 knew weights by numbers alone, which are written as they were. */
  private static Json.Obj stateWeightsByNumbers(Json.Obj study) {
    return study;
  }

  /** Schema 4 took a limit of moisture to lie the way from the initial activity to it. */
  private static Json.Obj sayWhichWayItSpoils(Json.Obj study) {
    Json.Obj brief = object(study, "brief");
    Json.Obj product = object(brief, "product");
    if (!Fields.of(product).has("moisture")) {
      return study;
    }
    Json.Obj moisture = object(product, "moisture");
    Fields fields = Fields.of(moisture);
    MoistureLimit.Way way =
        MoistureLimit.Way.between(
            fields.object("isotherm", SorptionCodec::read),
            fields.number("initial_activity"),
            fields.number("critical_activity"));
    Json said = new Json.Text(moisture.place(), Choice.plain(way));
    Json.Obj lifted = with(product, "moisture", with(moisture, "spoilt_by", said));
    return with(study, "brief", with(brief, "product", lifted));
  }

  /** Schema 5 knew no plant, and none is needed. */
  private static Json.Obj sayNothingOfAPlant(Json.Obj study) {
    return study;
  }

  private static Json.Obj object(Json.Obj within, String key) {
    Json value = Fields.of(within).value(key);
    Fields.entries(value);
    return (Json.Obj) value;
  }

  private static Json.Obj with(Json.Obj object, String key, Json value) {
    Map<String, Json> entries = new LinkedHashMap<>(object.entries());
    entries.put(key, value);
    return new Json.Obj(object.place(), entries);
  }

  private static Json.Obj without(Json.Obj object, String key) {
    Map<String, Json> entries = new LinkedHashMap<>(object.entries());
    entries.remove(key);
    return new Json.Obj(object.place(), entries);
  }
}
