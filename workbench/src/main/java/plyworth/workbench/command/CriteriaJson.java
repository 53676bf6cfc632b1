package plyworth.workbench.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plyworth.shared.data.Json;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** The criteria of one structure as JSON, by full criterion id. */
final class CriteriaJson {

  private CriteriaJson() {}

  static Json of(Ranked ranked, Valuation valuation) {
    List<Weighed> criteria = ranked.ranking().model().criteria();
    Map<String, Json> entries = new LinkedHashMap<>();
    for (int c = 0; c < criteria.size(); c++) {
      entries.put(
          criteria.get(c).criterion().id(), one(ranked, criteria.get(c), valuation.parts().get(c)));
    }
    return Json.of(entries);
  }

  private static Json one(Ranked ranked, Weighed weighed, Valuation.Part part) {
    Criterion criterion = weighed.criterion().criterion();
    ScoringPlugin plugin = CriterionText.plugin(ranked, weighed.criterion());
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("value", Json.of(Digits.exported(part.low())));
    entries.put("unit", Json.of(criterion.unit()));
    entries.put("conditions", Json.of(criterion.conditions()));
    if (!criterion.classes().isEmpty() && part.known()) {
      entries.put("class", Json.of(CriterionText.figure(ranked, weighed, part.low())));
    }
    if (weighed.criterion().notApplicable().isPresent()) {
      entries.put(
          "notApplicable",
          Json.of(Sentences.of(plugin, weighed.criterion().notApplicable().get(), Locale.ENGLISH)));
    }
    if (weighed.counts()) {
      entries.put("worth", Json.of(Digits.exported(part.valueLow())));
      entries.put("contribution", Json.of(Digits.exported(part.contribution())));
    }
    return Json.of(entries);
  }
}
