package plyworth.shared.structure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonText;
import plyworth.shared.data.Resources;
import plyworth.shared.data.Spelling;

/** Reads and writes neighbour rules as data. */
public final class NeighbourRules {

  private static final List<String> FORMS =
      List.of(
          "neighbours", "web-bond-web", "face", "outermost", "innermost", "at-most", "at-least");

  private NeighbourRules() {}

  /** The rules of the trade that come with the product. */
  public static List<NeighbourRule> standard() {
    String name = "neighbour-rules.json";
    return Fields.list(
        JsonText.read(Resources.text(NeighbourRules.class, name), name), NeighbourRules::read);
  }

  /** Reads one rule. */
  public static NeighbourRule read(Json json) {
    return Fields.read(json, NeighbourRules::rule);
  }

  /** Writes one rule. */
  public static Json write(NeighbourRule rule) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("rule", Json.of(form(rule)));
    entries.put("id", Json.of(rule.id()));
    if (rule instanceof NeighbourRule.Neighbours r) {
      entries.put("outer", Json.of(r.outer().text()));
      entries.put("inner", Json.of(r.inner().text()));
      entries.put("allowed", Json.of(false));
    } else if (rule instanceof NeighbourRule.WebBondWeb r) {
      entries.put("outer", Json.of(r.outer().text()));
      entries.put("bond", Json.of(r.bond() == null ? "none" : r.bond().text()));
      entries.put("inner", Json.of(r.inner().text()));
      entries.put("allowed", Json.of(false));
    } else if (rule instanceof NeighbourRule.Face r) {
      entries.put("outer", Json.of(r.outer().text()));
      entries.put("inner", Json.of(r.inner().text()));
      entries.put("allowed", Json.of(false));
    } else if (rule instanceof NeighbourRule.Outermost r) {
      entries.put("only", Json.of(r.only().text()));
    } else if (rule instanceof NeighbourRule.Innermost r) {
      entries.put("only", Json.of(r.only().text()));
    } else if (rule instanceof NeighbourRule.AtMost r) {
      entries.put("kind", Json.of(r.kind().text()));
      entries.put("n", Json.of(r.n()));
    } else if (rule instanceof NeighbourRule.AtLeast r) {
      entries.put("kind", Json.of(r.kind().text()));
      entries.put("n", Json.of(r.n()));
    }
    entries.put("reason", Json.of(rule.reason()));
    entries.put("source", Json.of(rule.source()));
    return Json.of(entries);
  }

  private static String form(NeighbourRule rule) {
    if (rule instanceof NeighbourRule.Neighbours) {
      return "neighbours";
    } else if (rule instanceof NeighbourRule.WebBondWeb) {
      return "web-bond-web";
    } else if (rule instanceof NeighbourRule.Face) {
      return "face";
    } else if (rule instanceof NeighbourRule.Outermost) {
      return "outermost";
    } else if (rule instanceof NeighbourRule.Innermost) {
      return "innermost";
    }
    return rule instanceof NeighbourRule.AtMost ? "at-most" : "at-least";
  }

  private static NeighbourRule rule(Fields fields) {
    String form = fields.text("rule");
    String id = fields.text("id");
    String reason = fields.text("reason");
    String source = fields.text("source");
    return switch (form) {
      case "neighbours" -> {
        forbids(fields);
        yield new NeighbourRule.Neighbours(
            id, kind(fields, "outer"), kind(fields, "inner"), reason, source);
      }
      case "web-bond-web" -> {
        forbids(fields);
        yield new NeighbourRule.WebBondWeb(
            id, kind(fields, "outer"), bond(fields), kind(fields, "inner"), reason, source);
      }
      case "face" -> {
        forbids(fields);
        yield new NeighbourRule.Face(
            id, kind(fields, "outer"), kind(fields, "inner"), reason, source);
      }
      case "outermost" -> new NeighbourRule.Outermost(id, kind(fields, "only"), reason, source);
      case "innermost" -> new NeighbourRule.Innermost(id, kind(fields, "only"), reason, source);
      case "at-most" ->
          new NeighbourRule.AtMost(id, kind(fields, "kind"), fields.whole("n"), reason, source);
      case "at-least" ->
          new NeighbourRule.AtLeast(id, kind(fields, "kind"), fields.whole("n"), reason, source);
      default ->
          throw new DataException(
              fields.value("rule").place(),
              "\"" + form + "\" is not a form of rule",
              Spelling.suggestion(form, FORMS));
    };
  }

  private static void forbids(Fields fields) {
    if (fields.flag("allowed")) {
      throw new DataException(
          fields.value("allowed").place(),
          "a rule can only forbid; what no rule forbids is allowed",
          "Write false, or leave the rule out.");
    }
  }

  private static KindExpression kind(Fields fields, String key) {
    return new KindExpression(fields.text(key));
  }

  private static KindExpression bond(Fields fields) {
    return fields.text("bond").equals("none") ? null : kind(fields, "bond");
  }
}
