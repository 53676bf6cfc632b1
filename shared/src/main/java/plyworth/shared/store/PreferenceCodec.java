package plyworth.shared.store;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.data.Place;
import plyworth.shared.data.Spelling;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;

/** What is wanted: weightings, value functions, limits and plugin settings. */
final class PreferenceCodec {

  private PreferenceCodec() {}

  static Weighting weighting(Fields fields) {
    return new Weighting(fields.text("name"), WeightsByCodec.read(fields));
  }

  static Json write(Weighting weighting) {
    return WeightsByCodec.write(new Entries().put("name", weighting.name()), weighting.by()).json();
  }

  static Map<String, Map<String, Double>> settings(Fields fields) {
    Map<String, Map<String, Double>> settings = new TreeMap<>();
    fields
        .map("settings", json -> json)
        .forEach(
            (plugin, json) ->
                settings.put(
                    CriterionId.checkedPlugin(json.place(), plugin),
                    numbers(json, CriterionId::checkedParameter)));
    return settings;
  }

  /** Numbers by key: weights, or the settings of one plugin. */
  static Json write(Map<String, Double> numbers) {
    Entries entries = new Entries();
    numbers.forEach((key, number) -> entries.put(key, number));
    return entries.json();
  }

  static Map<String, Double> numbers(Json json, BiFunction<Place, String, String> checkedKey) {
    Map<String, Double> numbers = new TreeMap<>();
    Fields.entries(json)
        .forEach(
            (key, value) ->
                numbers.put(checkedKey.apply(value.place(), key), Fields.number(value)));
    return numbers;
  }

  static Map<String, ValueFunction> valueFunctions(Fields fields) {
    Map<String, ValueFunction> functions = new TreeMap<>();
    fields
        .map("value_functions", json -> json)
        .forEach(
            (criterion, json) ->
                functions.put(
                    CriterionId.checked(json.place(), criterion),
                    Fields.read(json, PreferenceCodec::valueFunction)));
    return functions;
  }

  private static ValueFunction valueFunction(Fields fields) {
    return new ValueFunction(logarithmic(fields), fields.objects("points", PreferenceCodec::point));
  }

  private static boolean logarithmic(Fields fields) {
    String scale = fields.text("scale");
    if (!scale.equals("linear") && !scale.equals("logarithmic")) {
      throw new DataException(
          fields.value("scale").place(),
          "\"" + scale + "\" is not a scale",
          Spelling.suggestion(scale, List.of("linear", "logarithmic")));
    }
    return scale.equals("logarithmic");
  }

  private static ValueFunction.Point point(Fields fields) {
    return new ValueFunction.Point(
        fields.number("figure"), fields.number("value"), fields.text("name", ""));
  }

  static Json write(ValueFunction function) {
    return new Entries()
        .put("scale", function.logarithmic() ? "logarithmic" : "linear")
        .put("points", function.points(), PreferenceCodec::write)
        .json();
  }

  private static Json write(ValueFunction.Point point) {
    return new Entries()
        .put("figure", point.figure())
        .put("value", point.value())
        .put("name", point.name())
        .json();
  }

  static Limit limit(Fields fields) {
    return new Limit(
        CriterionId.read(fields.value("criterion")),
        fields.choice("bound", Limit.Bound.class),
        fields.number("figure"),
        fields.text("reason", ""));
  }

  static Json write(Limit limit) {
    return new Entries()
        .put("criterion", limit.criterion())
        .put("bound", limit.bound())
        .put("figure", limit.figure())
        .put("reason", limit.reason())
        .json();
  }
}
