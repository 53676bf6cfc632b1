package plyworth.workbench.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.GroupCounts;
import plyworth.workbench.ranking.ParetoFront;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Weighed;

/** A ranking as JSON, version 1 of the interface. */
final class RankingJson {

  private RankingJson() {}

  static Json of(Ranked ranked, Optional<ParetoFront> front) {
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth rank"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(ranked.study().title()));
    root.put("weighting", weighting(ranked));
    root.put("counts", counts(ranked));
    List<Json> candidates = new ArrayList<>();
    for (RankedCandidate candidate : ranked.best()) {
      candidates.add(candidate(ranked, candidates.size() + 1, candidate));
    }
    root.put("candidates", Json.of(candidates));
    front.ifPresent(found -> root.put("paretoFront", front(ranked, found)));
    root.put("baseline", SheetJson.body(ranked, ranked.baseline()));
    return Json.of(root);
  }

  private static Json weighting(Ranked ranked) {
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
    return Json.of(entries);
  }

  private static Json counts(Ranked ranked) {
    GroupCounts counts = ranked.ranking().counts();
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("candidates", Json.of(ranked.scored().table().total()));
    entries.put("ranked", Json.of(counts.ranked()));
    entries.put("blocked", Json.of(counts.blocked()));
    entries.put("excluded", Json.of(counts.excluded()));
    entries.put("cannotBeJudged", Json.of(counts.cannotBeJudged() + counts.open()));
    entries.put("complete", Json.of(ranked.ranking().complete()));
    return Json.of(entries);
  }

  private static Json front(Ranked ranked, ParetoFront front) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("complete", Json.of(front.complete()));
    entries.put(
        "structures",
        Json.of(front.paths().stream().map(p -> Json.of(ranked.structure(p).toString())).toList()));
    return Json.of(entries);
  }

  private static Json candidate(Ranked ranked, int rank, RankedCandidate candidate) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("rank", Json.of(rank));
    entries.put("path", Json.of(candidate.path()));
    entries.put("structure", Json.of(ranked.structure(candidate.path()).toString()));
    entries.put("value", Json.of(Digits.exported(candidate.value())));
    entries.put("valueHigh", Json.of(Digits.exported(candidate.valueHigh())));
    entries.put("criteria", CriteriaJson.of(ranked, candidate.valuation()));
    return Json.of(entries);
  }
}
