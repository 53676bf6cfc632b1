package plyworth.workbench.command.candidate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plyworth.shared.data.Json;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;

/** Explanations as JSON: sections by plugin, each with its basis. */
final class ExplanationJson {

  private final ScoringPlugin plugin;

  private ExplanationJson(ScoringPlugin plugin) {
    this.plugin = plugin;
  }

  static Json of(Ranked ranked, Structure structure) {
    BoundPlugins bound = ranked.scored().compiled().prepared().bound();
    Map<String, Explanation> explanations = bound.explain(structure);
    Map<String, Json> entries = new LinkedHashMap<>();
    bound
        .plugins()
        .forEach(
            p ->
                entries.put(
                    p.id(),
                    Json.of(
                        explanations.get(p.id()).sections().stream()
                            .map(new ExplanationJson(p.plugin())::section)
                            .toList())));
    return Json.of(entries);
  }

  private Json section(Explanation.Section section) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("title", text(section.title()));
    if (section instanceof Explanation.Table table) {
      entries.put("columns", texts(table.columns()));
      entries.put(
          "rows",
          Json.of(
              table.rows().stream()
                  .map(row -> Json.of(row.stream().map(this::cell).toList()))
                  .toList()));
    } else if (section instanceof Explanation.Bars bars) {
      entries.put("unit", Json.of(bars.unit()));
      entries.put("labels", Json.of(bars.labels().stream().map(this::word).toList()));
      entries.put("lengths", numbers(bars.lengths()));
    } else if (section instanceof Explanation.Curves curves) {
      entries.put("x", text(curves.x()));
      entries.put("y", text(curves.y()));
      entries.put("series", Json.of(curves.series().stream().map(this::series).toList()));
    }
    entries.put("basis", text(section.basis()));
    return Json.of(entries);
  }

  private Json series(Explanation.Series series) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("name", text(series.name()));
    entries.put("x", numbers(series.x()));
    entries.put("y", numbers(series.y()));
    return Json.of(entries);
  }

  private Json text(Text text) {
    return Json.of(Sentences.of(plugin, text, Locale.ENGLISH));
  }

  private Json texts(List<Text> texts) {
    return Json.of(texts.stream().map(this::text).toList());
  }

  private Json cell(Object cell) {
    return cell instanceof Double number ? Json.of(Digits.exported(number)) : word(cell.toString());
  }

  private Json word(String word) {
    return Json.of(Sentences.word(plugin, word, Locale.ENGLISH));
  }

  private static Json numbers(List<Double> numbers) {
    return Json.of(numbers.stream().map(n -> Json.of(Digits.exported(n))).toList());
  }
}
