package plyworth.workbench.desktop.plugin;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.data.Choice;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.InterfaceLevel;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.Sentences;

/** What a plugin says of itself, as pages to read. */
final class PluginPage {

  private final ScoringPlugin plugin;
  private final StringBuilder html = new StringBuilder("<html>");

  private PluginPage(ScoringPlugin plugin) {
    this.plugin = plugin;
  }

  /** Who it is, where it comes from, and what is wrong with it, in plain lines. */
  static String facts(PluginEntry entry) {
    List<String> facts = new ArrayList<>();
    entry
        .loaded()
        .map(LoadedPlugin::plugin)
        .ifPresentOrElse(
            plugin -> {
              facts.add(
                  Words.of(
                      "plugins.identity",
                      entry.name(),
                      plugin.card().version(),
                      InterfaceLevel.CURRENT));
              facts.add(Words.of("plugins.provides", figures(plugin.provides())));
              facts.add(Words.of("plugins.needs", figures(plugin.needs())));
            },
            () -> facts.add(Words.of("plugins.state." + Choice.plain(entry.state()))));
    entry.origin().ifPresent(path -> facts.add(Words.of("plugins.origin", path)));
    if (!entry.reason().isEmpty()) {
      facts.add(Words.of("plugins.reason", Reason.of(entry.reason())));
    }
    return String.join("\n", facts);
  }

  private static String figures(List<Figure> figures) {
    return figures.isEmpty()
        ? Words.of("plugins.no-figure")
        : String.join(
            ", ",
            figures.stream()
                .map(figure -> Words.of("plugins.figure." + Choice.plain(figure)))
                .toList());
  }

  /** What users must bear in mind. */
  static String cautions(ScoringPlugin plugin) {
    PluginPage page = new PluginPage(plugin);
    plugin.card().cautions().forEach(caution -> page.line("▲ " + page.said(caution)));
    return page.html.append("</html>").toString();
  }

  /** Every criterion with its formula and source. */
  static String criteria(ScoringPlugin plugin) {
    PluginPage page = new PluginPage(plugin);
    plugin.criteria().forEach(page::criterion);
    return page.html.append("</html>").toString();
  }

  /** What it blocks by, and what it reads of materials. */
  static String rules(ScoringPlugin plugin) {
    PluginPage page = new PluginPage(plugin);
    for (BlockingRule rule : plugin.blockingRules()) {
      page.line(Words.of("plugins.rule", rule.id(), page.said(rule.title())));
    }
    if (plugin.blockingRules().isEmpty()) {
      page.line(Words.of("plugins.no-rule"));
    }
    for (PropertyDefinition definition : plugin.properties()) {
      page.line(
          Words.of(
              "plugins.property",
              definition.id(),
              UnitText.of(definition.unit()),
              page.word(definition.meaning()),
              Digits.sensible(definition.lowest()),
              Digits.sensible(definition.highest())));
    }
    return page.html.append("</html>").toString();
  }

  private void criterion(Criterion criterion) {
    String unit = UnitText.of(criterion.unit());
    html.append("<p style='margin-top:6'><b>")
        .append(Html.escaped(said(criterion.title())))
        .append("</b> ")
        .append(Html.escaped(unit.isEmpty() || unit.equals("1") ? "" : ", " + unit))
        .append("<br>")
        .append(
            Html.escaped(
                Words.of(
                    "plugins.criterion",
                    plugin.card().id() + "/" + criterion.id(),
                    Words.of("plugins.better." + Choice.plain(criterion.direction())))));
    if (!criterion.conditions().isEmpty()) {
      html.append("<br>").append(Html.escaped(word(criterion.conditions())));
    }
    html.append("<br>").append(Html.escaped(said(criterion.formula()))).append("</p>");
  }

  private void line(String text) {
    html.append("<p style='margin-top:4'>").append(Html.escaped(text)).append("</p>");
  }

  private String word(String word) {
    return Sentences.word(plugin, word, Language.inForce().locale());
  }

  private String said(Text text) {
    return Sentences.of(plugin, text, Language.inForce().locale());
  }
}
