package plyworth.workbench.command.candidate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.Json;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Outcome;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.print.CriterionText;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** The criteria of one structure as JSON, by full criterion id. */
public final class CriteriaJson {

  private CriteriaJson() {}

  /** The figures and values of a candidate. */
  public static Json of(Ranked ranked, Valuation valuation) {
    List<Weighed> criteria = ranked.ranking().model().criteria();
    Map<String, Json> entries = new LinkedHashMap<>();
    for (int c = 0; c < criteria.size(); c++) {
      Map<String, Json> one = one(ranked, criteria.get(c), valuation.parts().get(c));
      entries.put(criteria.get(c).criterion().id(), Json.of(one));
    }
    return Json.of(entries);
  }

  /** The same of a sheet, which also knows what data is missing. */
  public static Json of(Ranked ranked, Sheet sheet) {
    List<Weighed> criteria = ranked.ranking().model().criteria();
    Map<String, Json> entries = new LinkedHashMap<>();
    for (int c = 0; c < criteria.size(); c++) {
      Map<String, Json> one = one(ranked, criteria.get(c), sheet.valuation().parts().get(c));
      if (sheet.outcomes().get(c) instanceof Outcome.DataMissing missing) {
        one.put("missing", missing(missing));
      }
      entries.put(criteria.get(c).criterion().id(), Json.of(one));
    }
    return Json.of(entries);
  }

  /** Which datum is missing. */
  static Json missing(Outcome.DataMissing missing) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("subject", Json.of(missing.subject()));
    entries.put("property", Json.of(missing.property()));
    return Json.of(entries);
  }

  private static Map<String, Json> one(Ranked ranked, Weighed weighed, Valuation.Part part) {
    Criterion criterion = weighed.criterion().criterion();
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("value", Json.of(Digits.exported(part.low())));
    entries.put("unit", Json.of(criterion.unit()));
    entries.put("conditions", Json.of(criterion.conditions()));
    if (!criterion.classes().isEmpty() && part.known()) {
      entries.put("class", Json.of(CriterionText.figure(ranked, weighed, part.low())));
    }
    if (weighed.criterion().notApplicable().isPresent()) {
      entries.put("notApplicable", Json.of(CriterionText.whyNot(ranked, weighed)));
    }
    if (weighed.counts()) {
      entries.put("worth", Json.of(Digits.exported(part.valueLow())));
      entries.put("contribution", Json.of(Digits.exported(part.contribution())));
    }
    return entries;
  }
}
