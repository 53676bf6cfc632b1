package plyworth.workbench.command.robustness;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.robustness.SecondOpinion;
import plyworth.workbench.robustness.SecondOpinion.Opinion;

/** How other methods order the best, as JSON. */
final class SecondOpinionJson {

  private SecondOpinionJson() {}

  static Json of(Ranked ranked, SecondOpinion second) {
    return Json.of(second.opinions().stream().map(o -> opinion(ranked, second, o)).toList());
  }

  private static Json opinion(Ranked ranked, SecondOpinion second, Opinion opinion) {
    List<Integer> ranks = opinion.ranks();
    long leader = second.candidates().get(opinion.leader()).path();
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("method", Json.of(Choice.plain(opinion.method())));
    entries.put("compared", Json.of(ranks.size()));
    entries.put("correlation", Json.of(Digits.exported(opinion.correlation())));
    entries.put("leader", Json.of(ranked.structure(leader).toString()));
    entries.put("ranks", Json.of(ranks.stream().map(Json::of).toList()));
    return Json.of(entries);
  }
}
