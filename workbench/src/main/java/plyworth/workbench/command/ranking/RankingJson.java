package plyworth.workbench.command.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.NotMakeable;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Search;
import plyworth.workbench.analysis.StructureKind;
import plyworth.workbench.command.candidate.CriteriaJson;
import plyworth.workbench.command.candidate.SheetJson;
import plyworth.workbench.command.print.WeightingJson;
import plyworth.workbench.engine.search.SearchEffort;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.GroupCounts;
import plyworth.workbench.ranking.ParetoFront;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Ranking;

/** A ranking as JSON, version 1 of the interface. */
final class RankingJson {

  private RankingJson() {}

  static Json of(Ranked ranked, BestList kinds, Optional<ParetoFront> front) {
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth rank"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(ranked.study().title()));
    root.put("weighting", WeightingJson.of(ranked));
    root.put("counts", counts(ranked));
    root.put("search", search(ranked));
    List<Json> candidates = new ArrayList<>();
    for (RankedCandidate candidate : ranked.best()) {
      candidates.add(candidate(ranked, candidates.size() + 1, candidate));
    }
    root.put("candidates", Json.of(candidates));
    root.put(
        "bestOfEachKind", Json.of(kinds.entries().stream().map(e -> ofKind(ranked, e)).toList()));
    root.put("proposal", ProposalJson.of(ranked));
    front.ifPresent(found -> root.put("paretoFront", front(ranked, found)));
    root.put("baseline", SheetJson.body(ranked, ranked.baseline()));
    return Json.of(root);
  }

  private static Json counts(Ranked ranked) {
    Optional<GroupCounts> counts =
        Optional.of(ranked.ranking()).filter(Ranking::isCounted).map(Ranking::counts);
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("candidates", Json.of(ranked.scored().compiled().paths().count()));
    entries.put("ranked", known(counts.map(GroupCounts::ranked)));
    entries.put("blocked", known(counts.map(GroupCounts::blocked)));
    entries.put("excluded", known(counts.map(GroupCounts::excluded)));
    entries.put("cannotBeJudged", known(counts.map(c -> c.cannotBeJudged() + c.open())));
    NotMakeable.count(ranked).ifPresent(count -> entries.put("notMakeable", Json.of(count)));
    entries.put("complete", Json.of(ranked.ranking().complete()));
    return Json.of(entries);
  }

  private static Json known(Optional<Long> count) {
    return count.map(Json::of).orElse(Json.of(Double.NaN));
  }

  private static Json search(Ranked ranked) {
    Optional<SearchEffort> effort = ranked.ranking().search();
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("way", Json.of(Choice.plain(effort.isPresent() ? Search.BOUNDED : Search.TABLE)));
    effort.ifPresent(
        e -> {
          entries.put("prefixesOpened", Json.of(e.opened()));
          entries.put("prefixesBounded", Json.of(e.bounded()));
          entries.put("candidatesScored", Json.of(e.scored()));
          entries.put("longestQueue", Json.of(e.longestQueue()));
        });
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

  private static Json ofKind(Ranked ranked, BestList.Entry entry) {
    RankedCandidate candidate = entry.candidate();
    Structure structure = ranked.structure(candidate.path());
    StructureKind kind = ranked.kinds().of(structure);
    OptionalLong rank = entry.rank();
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("barrier", names(kind.barrier()));
    entries.put("printing", names(kind.printing()));
    entries.put("sealant", Json.of(kind.sealant()));
    entries.put("rank", rank.isPresent() ? Json.of(rank.getAsLong()) : Json.of((String) null));
    entries.put("path", Json.of(candidate.path()));
    entries.put("structure", Json.of(structure.toString()));
    entries.put("value", Json.of(Digits.exported(candidate.value())));
    return Json.of(entries);
  }

  private static Json names(List<String> ids) {
    return Json.of(ids.stream().map(Json::of).toList());
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
