package plyworth.workbench.command.robustness;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.robustness.Stakeholders;
import plyworth.workbench.robustness.WeightInterval;

/** How far a ranking can be trusted, as JSON, version 1 of the interface. */
final class RobustnessJson {

  private final Ranked ranked;

  private RobustnessJson(Ranked ranked) {
    this.ranked = ranked;
  }

  static Json of(RobustnessCommand.Robustness found) {
    RobustnessJson json = new RobustnessJson(found.ranked());
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth robustness"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(found.ranked().study().title()));
    root.put("weighting", Json.of(found.ranked().study().weighting()));
    root.put("leaders", Json.of(found.ranked().best().stream().map(json::leader).toList()));
    Map<String, Json> stability = new LinkedHashMap<>();
    for (WeightInterval interval : found.intervals()) {
      stability.put(json.criterion(interval), json.interval(interval));
    }
    root.put("stability", Json.of(stability));
    root.put("stakeholders", json.stakeholders(found.stakeholders()));
    root.put("secondOpinions", SecondOpinionJson.of(found.ranked(), found.second()));
    found
        .weightsAlone()
        .ifPresent(
            w -> root.put("weightsAlone", WeightChancesJson.of(found.ranked(), w, found.top())));
    found
        .acceptability()
        .ifPresent(a -> root.put("acceptability", ChancesJson.of(found.ranked(), a)));
    return Json.of(root);
  }

  private Json leader(RankedCandidate candidate) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("structure", structure(candidate.path()));
    entries.put("value", number(candidate.value()));
    entries.put("valueHigh", number(candidate.valueHigh()));
    return Json.of(entries);
  }

  private String criterion(WeightInterval interval) {
    return ranked.ranking().model().criteria().get(interval.criterion()).criterion().id();
  }

  private Json interval(WeightInterval interval) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("weight", number(interval.weight()));
    entries.put("from", number(interval.lower().weight()));
    entries.put("to", number(interval.upper().weight()));
    interval.lower().overtaker().ifPresent(path -> entries.put("below", structure(path)));
    interval.upper().overtaker().ifPresent(path -> entries.put("above", structure(path)));
    entries.put("tied", Json.of(interval.tied()));
    return Json.of(entries);
  }

  private Json stakeholders(Stakeholders stakeholders) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("weightings", Json.of(stakeholders.weightings().stream().map(Json::of).toList()));
    entries.put("weightless", Json.of(stakeholders.weightless().stream().map(Json::of).toList()));
    entries.put("depth", Json.of(stakeholders.depth()));
    entries.put(
        "candidates",
        Json.of(stakeholders.standings().stream().map(s -> standing(stakeholders, s)).toList()));
    entries.put("agreed", Json.of(stakeholders.agreed().stream().map(this::structure).toList()));
    stakeholders.leastRegret().ifPresent(path -> entries.put("leastRegret", structure(path)));
    return Json.of(entries);
  }

  private Json standing(Stakeholders stakeholders, Stakeholders.Standing standing) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("structure", structure(standing.path()));
    entries.put("mostLost", number(standing.greatestLoss()));
    List<Json> views = new ArrayList<>();
    for (String name : stakeholders.weightings()) {
      Map<String, Json> view = new LinkedHashMap<>();
      OptionalLong rank = standing.ranks().get(views.size());
      view.put("weighting", Json.of(name));
      view.put("rank", Json.of(rank.isPresent() ? (double) rank.getAsLong() : Double.NaN));
      view.put("value", number(standing.values().get(views.size())));
      views.add(Json.of(view));
    }
    entries.put("views", Json.of(views));
    return Json.of(entries);
  }

  private Json structure(long path) {
    return Json.of(ranked.structure(path).toString());
  }

  private static Json number(double figure) {
    return Json.of(Digits.exported(figure));
  }
}
