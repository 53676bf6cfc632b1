package plyworth.workbench.command.candidate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.study.Limit;
import plyworth.workbench.analysis.Hindrance;
import plyworth.workbench.analysis.Inquiry;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.print.FindingText;
import plyworth.workbench.engine.graph.AddedOption;
import plyworth.workbench.engine.graph.LayerEdit;
import plyworth.workbench.host.Digits;

/** Why a structure is not offered or not ranked, as JSON, version 1 of the interface. */
final class WhyJson {

  /** Significant digits of exported figures. */
  private static final int DIGITS = 9;

  private final Ranked ranked;

  private WhyJson(Ranked ranked) {
    this.ranked = ranked;
  }

  static Json of(WhyCommand.Answer answer) {
    WhyJson json = new WhyJson(answer.ranked());
    Inquiry inquiry = answer.inquiry();
    Sheet sheet = inquiry.sheet();
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth why"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(answer.ranked().study().title()));
    root.put("weighting", Json.of(answer.ranked().study().weighting()));
    root.put("structure", Json.of(sheet.structure().toString()));
    root.put("onOffer", Json.of(sheet.onOffer()));
    root.put("path", number(sheet.path()));
    root.put("standing", Json.of(Choice.plain(sheet.group())));
    root.put("rank", number(answer.rank()));
    root.put("value", Json.of(Digits.exported(sheet.valuation().value())));
    root.put("objections", SheetJson.objections(sheet));
    root.put("admission", json.admission(inquiry));
    root.put("hindrances", Json.of(inquiry.hindrances().stream().map(json::hindrance).toList()));
    root.put("oneLimitSuffices", Json.of(inquiry.oneLimitSuffices()));
    root.put("nearest", Json.of(inquiry.nearest().stream().map(WhyJson::neighbour).toList()));
    root.put(
        "nearestRanked",
        inquiry.nearestRanked().map(WhyJson::neighbour).orElse(Json.of(Double.NaN)));
    return Json.of(root);
  }

  private static Json number(OptionalLong number) {
    return Json.of(number.isPresent() ? (double) number.getAsLong() : Double.NaN);
  }

  private Json admission(Inquiry inquiry) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("offer", Json.of(inquiry.admission().options().stream().map(this::added).toList()));
    List<NeighbourRule> rules = inquiry.admission().rules();
    entries.put("lift", Json.of(rules.stream().map(rule -> Json.of(rule.id())).toList()));
    return Json.of(entries);
  }

  private Json added(AddedOption added) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("position", Json.of(added.position()));
    entries.put("title", Json.of(ranked.study().positions().get(added.position()).title()));
    entries.put("option", Json.of(added.option().toString()));
    return Json.of(entries);
  }

  private Json hindrance(Hindrance hindrance) {
    Map<String, Json> entries = new LinkedHashMap<>();
    if (hindrance instanceof Hindrance.Block block) {
      entries.put("kind", Json.of("block"));
      entries.put("plugin", Json.of(block.remark().plugin()));
      entries.put("rule", Json.of(block.remark().finding().rule()));
      entries.put("text", Json.of(FindingText.sentence(ranked, block.remark())));
      entries.put("source", Json.of(block.remark().finding().source()));
    } else if (hindrance instanceof Hindrance.UnknownFigure unknown) {
      entries.put("kind", Json.of("unknown"));
      limit(unknown.limit(), entries);
      entries.put("missing", CriteriaJson.missing(unknown.missing()));
    } else if (hindrance instanceof Hindrance.BrokenLimit broken) {
      entries.put("kind", Json.of("limit"));
      limit(broken.limit(), entries);
      entries.put("value", Json.of(Digits.exported(broken.figure())));
      entries.put("relaxedTo", Json.of(broken.relaxed(DIGITS)));
    }
    return Json.of(entries);
  }

  private void limit(Limit limit, Map<String, Json> entries) {
    entries.put("criterion", Json.of(limit.criterion()));
    entries.put("bound", Json.of(Choice.plain(limit.bound())));
    entries.put("limit", Json.of(Digits.exported(limit.figure())));
    int index = ranked.ranking().model().indexOf(limit.criterion()).orElseThrow();
    entries.put(
        "unit",
        Json.of(ranked.ranking().model().criteria().get(index).criterion().criterion().unit()));
    entries.put("reason", Json.of(limit.reason()));
  }

  private static Json neighbour(Inquiry.Neighbour neighbour) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("path", Json.of(neighbour.near().path()));
    entries.put("structure", Json.of(neighbour.sheet().structure().toString()));
    entries.put("standing", Json.of(Choice.plain(neighbour.sheet().group())));
    entries.put("value", Json.of(Digits.exported(neighbour.sheet().valuation().value())));
    List<LayerEdit> edits = neighbour.near().edits();
    entries.put("edits", Json.of(edits.stream().map(WhyJson::edit).toList()));
    return Json.of(entries);
  }

  private static Json edit(LayerEdit edit) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("kind", Json.of(Choice.plain(edit.kind())));
    entries.put("layer", Json.of(edit.at()));
    edit.before().ifPresent(layer -> entries.put("before", Json.of(layer.toString())));
    edit.after().ifPresent(layer -> entries.put("after", Json.of(layer.toString())));
    return Json.of(entries);
  }
}
