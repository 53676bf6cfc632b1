package plyworth.workbench.command.evidence;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.data.Json;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.analysis.ResultsReview;
import plyworth.workbench.host.Digits;

/** What the results of a study came to, as JSON, version 1 of the interface. */
final class ResultsJson {

  private ResultsJson() {}

  static Json of(ResultsCommand.Answer answer) {
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth results"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(answer.after().study().title()));
    root.put("weighting", Json.of(answer.after().study().weighting()));
    root.put(
        "materials",
        Json.of(answer.review().materials().stream().map(ResultsJson::material).toList()));
    root.put(
        "candidates",
        Json.of(answer.review().candidates().stream().map(ResultsJson::candidate).toList()));
    root.put("leaderBefore", Json.of(ResultsText.leader(answer.before()).orElse(null)));
    root.put("leader", Json.of(ResultsText.leader(answer.after()).orElse(null)));
    return Json.of(root);
  }

  private static Json material(ResultsReview.Moved moved) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("material", Json.of(moved.material()));
    entries.put("property", Json.of(moved.property()));
    entries.put("unit", Json.of(moved.unit()));
    entries.put("at", number(moved.at()));
    entries.put("before", range(moved.before()));
    entries.put("readings", Json.of(moved.readings().stream().map(ResultsJson::reading).toList()));
    entries.put("after", range(moved.after()));
    return Json.of(entries);
  }

  private static Json candidate(ResultsReview.Compared compared) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("structure", Json.of(compared.structure().toString()));
    entries.put("criterion", Json.of(compared.reading().figure()));
    entries.put("predicted", range(compared.predicted()));
    entries.put("reading", reading(compared.reading()));
    entries.put("ratio", number(compared.ratio()));
    return Json.of(entries);
  }

  private static Json reading(Measurement reading) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("value", number(reading.value()));
    entries.put("unit", Json.of(reading.unit()));
    entries.put("spread", number(reading.spread()));
    entries.put("samples", number(reading.samples()));
    entries.put("method", Json.of(reading.method()));
    entries.put("date", Json.of(reading.date()));
    return Json.of(entries);
  }

  private static Json range(Range range) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("low", number(range.low()));
    entries.put("typical", number(range.typical()));
    entries.put("high", number(range.high()));
    return Json.of(entries);
  }

  private static Json number(double figure) {
    return Json.of(Digits.exported(figure));
  }
}
