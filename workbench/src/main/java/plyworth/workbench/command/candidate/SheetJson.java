package plyworth.workbench.command.candidate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.shared.quantity.Range;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.print.FindingText;
import plyworth.workbench.engine.Objection;
import plyworth.workbench.host.Digits;

/** One structure as JSON, version 1 of the interface. */
public final class SheetJson {

  private SheetJson() {}

  static Json of(Ranked ranked, Sheet sheet, Map<String, Range> ranges) {
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth score"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(ranked.study().title()));
    root.putAll(((Json.Obj) body(ranked, sheet)).entries());
    root.put("ranges", ranges(ranges));
    root.put("explanation", ExplanationJson.of(ranked, sheet.structure()));
    return Json.of(root);
  }

  /** What the ranking says of its baseline, too. */
  public static Json body(Ranked ranked, Sheet sheet) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("structure", Json.of(sheet.structure().toString()));
    entries.put("onOffer", Json.of(sheet.onOffer()));
    entries.put("objections", objections(sheet));
    entries.put("standing", Json.of(Choice.plain(sheet.group())));
    entries.put("value", Json.of(Digits.exported(sheet.valuation().value())));
    entries.put("valueHigh", Json.of(Digits.exported(sheet.valuation().valueHigh())));
    entries.put("criteria", CriteriaJson.of(ranked, sheet));
    List<Json> findings = new ArrayList<>();
    sheet.remarks().forEach(r -> findings.add(finding(ranked, r)));
    entries.put("findings", Json.of(findings));
    return Json.of(entries);
  }

  /** Why a structure is not on offer. */
  static Json objections(Sheet sheet) {
    return Json.of(sheet.objections().stream().map(SheetJson::of).toList());
  }

  private static Json of(Objection objection) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("rule", Json.of(objection.rule()));
    entries.put("reason", Json.of(objection.reason()));
    entries.put("source", Json.of(objection.source()));
    return Json.of(entries);
  }

  private static Json finding(Ranked ranked, Sheet.Remark remark) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("plugin", Json.of(remark.plugin()));
    entries.put("level", Json.of(remark.finding().level().name().toLowerCase(Locale.ROOT)));
    entries.put("rule", Json.of(remark.finding().rule()));
    entries.put("text", Json.of(FindingText.sentence(ranked, remark)));
    entries.put("source", Json.of(remark.finding().source()));
    return Json.of(entries);
  }

  private static Json ranges(Map<String, Range> ranges) {
    Map<String, Json> entries = new LinkedHashMap<>();
    ranges.forEach(
        (id, range) -> {
          Map<String, Json> ends = new LinkedHashMap<>();
          ends.put("low", Json.of(Digits.exported(range.low())));
          ends.put("typical", Json.of(Digits.exported(range.typical())));
          ends.put("high", Json.of(Digits.exported(range.high())));
          entries.put(id, Json.of(ends));
        });
    return Json.of(entries);
  }
}
