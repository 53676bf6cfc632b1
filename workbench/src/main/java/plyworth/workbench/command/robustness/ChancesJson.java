package plyworth.workbench.command.robustness;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Weighed;
import plyworth.workbench.robustness.Acceptability;
import plyworth.workbench.robustness.Chance;

/** How often candidates come first while weights and inputs are uncertain, as JSON. */
final class ChancesJson {

  private ChancesJson() {}

  static Json of(Ranked ranked, Acceptability acceptability) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("weights", Json.of(Choice.plain(acceptability.plan().doubt())));
    entries.put("draws", Json.of(acceptability.draws()));
    entries.put("seed", Json.of(acceptability.plan().seed()));
    entries.put("precision", number(acceptability.plan().precision()));
    entries.put("precise", Json.of(acceptability.precise()));
    entries.put("compared", Json.of(acceptability.reach().compared()));
    entries.put("whole", Json.of(acceptability.reach().whole()));
    entries.put("everAmongTen", Json.of(acceptability.reach().reaching()));
    entries.put("last", Json.of(acceptability.reach().last()));
    entries.put("lastAmongTen", Json.of(acceptability.reach().lastReaching()));
    entries.put(
        "candidates",
        Json.of(
            acceptability.chances().stream()
                .filter(c -> c.amongTen() > 0)
                .map(c -> chance(ranked, c))
                .toList()));
    return Json.of(entries);
  }

  private static Json chance(Ranked ranked, Chance chance) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("structure", Json.of(ranked.structure(chance.path()).toString()));
    entries.put("first", number(chance.first()));
    entries.put("standardError", number(chance.firstError()));
    entries.put("amongThree", number(chance.amongThree()));
    entries.put("amongTen", number(chance.amongTen()));
    entries.put("notRanked", number(chance.unranked()));
    entries.put("confidence", number(chance.confidence()));
    entries.put("centralWeights", central(ranked, chance.centralWeights()));
    return Json.of(entries);
  }

  /** Central weights by criterion; nothing for a candidate that never came first. */
  static Json central(Ranked ranked, List<Double> weights) {
    Map<String, Json> central = new LinkedHashMap<>();
    for (int c = 0; c < weights.size(); c++) {
      Weighed weighed = ranked.ranking().model().criteria().get(c);
      if (weighed.counts()) {
        central.put(weighed.criterion().id(), number(weights.get(c)));
      }
    }
    return Json.of(central);
  }

  private static Json number(double figure) {
    return Json.of(Digits.exported(figure));
  }
}
