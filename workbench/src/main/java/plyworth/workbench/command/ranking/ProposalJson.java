package plyworth.workbench.command.ranking;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Proposal;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;

/** What to trial and what to fall back on, as JSON. */
final class ProposalJson {

  private ProposalJson() {}

  static Json of(Ranked ranked) {
    Proposal proposal = Proposal.of(ranked);
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("trials", Json.of(proposal.trials().stream().map(ProposalJson::pick).toList()));
    entries.put(
        "fallback", proposal.fallback().map(ProposalJson::pick).orElse(Json.of((String) null)));
    return Json.of(entries);
  }

  private static Json pick(Proposal.Pick pick) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("reason", Json.of(Choice.plain(pick.reason())));
    entries.put("structure", Json.of(pick.structure().toString()));
    entries.put("value", Json.of(Digits.exported(pick.valuation().value())));
    return Json.of(entries);
  }
}
