package plyworth.workbench.command.candidate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.WeightingJson;
import plyworth.workbench.host.Digits;

/** Structures side by side as JSON, version 1 of the interface. */
final class ComparisonJson {

  private ComparisonJson() {}

  static Json of(Ranked ranked, List<Compared> sheets) {
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth compare"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(ranked.study().title()));
    root.put("weighting", WeightingJson.of(ranked));
    root.put("structures", Json.of(sheets.stream().map(s -> one(ranked, s, sheets)).toList()));
    return Json.of(root);
  }

  private static Json one(Ranked ranked, Compared compared, List<Compared> sheets) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("name", Json.of(compared.name()));
    entries.putAll(((Json.Obj) SheetJson.body(ranked, compared.sheet())).entries());
    if (compared != sheets.get(0)) {
      entries.put("gainedAgainstToday", gains(ranked, compared, sheets.get(0)));
    }
    return Json.of(entries);
  }

  private static Json gains(Ranked ranked, Compared compared, Compared today) {
    Map<String, Json> entries = new LinkedHashMap<>();
    compared
        .against(today.sheet(), ranked.ranking().model().criteria())
        .forEach(
            gain ->
                entries.put(
                    gain.criterion().criterion().id(), Json.of(Digits.exported(gain.value()))));
    return Json.of(entries);
  }
}
