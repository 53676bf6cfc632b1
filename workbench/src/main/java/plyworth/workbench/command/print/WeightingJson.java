package plyworth.workbench.command.print;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Weighed;

/** A weighting as JSON. */
public final class WeightingJson {

  private WeightingJson() {}

  /** Name and shares of the weighting. */
  public static Json of(Ranked ranked) {
    Map<String, Json> weights = new LinkedHashMap<>();
    for (Weighed weighed : ranked.ranking().model().criteria()) {
      if (weighed.counts()) {
        weights.put(weighed.criterion().id(), Json.of(Digits.exported(weighed.weight())));
      }
    }
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("name", Json.of(ranked.study().weighting()));
    entries.put("weights", Json.of(weights));
    entries.put("sharedOut", Json.of(Digits.exported(ranked.ranking().model().sharedOut())));
    WeightsByText.put(entries, ranked.study().activeWeighting().by());
    return Json.of(entries);
  }
}
