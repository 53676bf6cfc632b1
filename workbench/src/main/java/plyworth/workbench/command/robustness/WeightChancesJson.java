package plyworth.workbench.command.robustness;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.RankShare;
import plyworth.workbench.robustness.WeightAcceptability;

/** How often candidates come first while weights alone are uncertain, as JSON. */
final class WeightChancesJson {

  private WeightChancesJson() {}

  static Json of(Ranked ranked, WeightAcceptability found, int top) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("weights", Json.of(Choice.plain(found.doubt())));
    entries.put("draws", Json.of(WeightAcceptability.DRAWS));
    entries.put("seed", Json.of(found.seed()));
    entries.put("everFirst", Json.of(found.shares().stream().filter(s -> s.first() > 0).count()));
    entries.put("everAmongTen", Json.of(found.shares().size()));
    entries.put(
        "candidates",
        Json.of(
            WeightChancesText.listed(found, top).stream()
                .map(share -> share(ranked, found, share))
                .toList()));
    return Json.of(entries);
  }

  private static Json share(Ranked ranked, WeightAcceptability found, RankShare share) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("structure", Json.of(ranked.structure(share.path()).toString()));
    entries.put("first", number(share.first()));
    entries.put("standardError", number(found.error(share.first())));
    entries.put("amongTen", number(share.among()));
    entries.put("centralWeights", ChancesJson.central(ranked, share.centralWeights()));
    return Json.of(entries);
  }

  private static Json number(double figure) {
    return Json.of(Digits.exported(figure));
  }
}
