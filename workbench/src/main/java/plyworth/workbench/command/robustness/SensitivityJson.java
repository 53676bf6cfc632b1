package plyworth.workbench.command.robustness;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.InputName;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.robustness.Influence;
import plyworth.workbench.robustness.Sensitivity;
import plyworth.workbench.robustness.UncertainInput;

/** Which uncertain inputs make a figure uncertain, as JSON, version 1 of the interface. */
final class SensitivityJson {

  private SensitivityJson() {}

  static Json of(SensitivityCommand.Found found) {
    Ranked ranked = found.ranked();
    Sensitivity sensitivity = found.sensitivity();
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth sensitivity"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(ranked.study().title()));
    root.put("weighting", Json.of(ranked.study().weighting()));
    root.put("structure", Json.of(found.sheet().structure().toString()));
    found
        .criterion()
        .ifPresent(
            c ->
                root.put(
                    "criterion",
                    Json.of(ranked.ranking().model().criteria().get(c).criterion().id())));
    root.put("typical", number(found.typical()));
    root.put("mean", number(sensitivity.mean()));
    root.put("standardDeviation", number(sensitivity.deviation()));
    root.put("basePoints", Json.of(sensitivity.plan().points()));
    root.put("unknownPoints", Json.of(sensitivity.unknown()));
    root.put("scored", Json.of((double) sensitivity.worlds()));
    root.put("seed", Json.of(sensitivity.plan().seed()));
    root.put(
        "inputs",
        Json.of(sensitivity.influences().stream().map(i -> influence(ranked, i)).toList()));
    root.put("held", Json.of(sensitivity.held().stream().sorted().map(Json::of).toList()));
    return Json.of(root);
  }

  private static Json influence(Ranked ranked, Influence influence) {
    UncertainInput input = influence.input();
    InputName text = InputName.of(ranked, input.id());
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("input", Json.of(input.id()));
    entries.put("name", Json.of(text.toString()));
    entries.put("unit", Json.of(text.unit()));
    entries.put("low", number(input.range().low()));
    entries.put("typical", number(input.range().typical()));
    entries.put("high", number(input.range().high()));
    entries.put("tabulated", Json.of(input.tabulated()));
    entries.put("firstOrder", index(influence.first()));
    entries.put("total", index(influence.total()));
    return Json.of(entries);
  }

  private static Json index(Influence.Index index) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("index", number(index.share()));
    entries.put("low", number(index.low()));
    entries.put("high", number(index.high()));
    return Json.of(entries);
  }

  private static Json number(double figure) {
    return Json.of(Digits.exported(figure));
  }
}
