package plyworth.workbench.command.candidate;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.host.UnitText;

/** Explanations for people. */
final class ExplanationText {

  private static final int CURVE_LINES = 8;

  private final ScoringPlugin plugin;
  private final PrintWriter out;

  private ExplanationText(ScoringPlugin plugin, PrintWriter out) {
    this.plugin = plugin;
    this.out = out;
  }

  /** The structure and, plugin by plugin, what is behind its figures. */
  static String of(Ranked ranked, Structure structure) {
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    out.println(Paragraph.structure("", structure.toString()));
    print(ranked, structure, out);
    out.flush();
    return text.toString();
  }

  private static void print(Ranked ranked, Structure structure, PrintWriter out) {
    BoundPlugins bound = ranked.scored().compiled().prepared().bound();
    Map<String, Explanation> explanations = bound.explain(structure);
    for (BoundPlugin one : bound.plugins()) {
      ExplanationText text = new ExplanationText(one.plugin(), out);
      out.println();
      out.println("== " + text.said(one.plugin().card().title()) + " ==");
      explanations.get(one.id()).sections().forEach(text::section);
      out.println();
      one.plugin()
          .card()
          .cautions()
          .forEach(c -> out.println(Paragraph.of("", "Caution: " + text.said(c))));
    }
  }

  private void section(Explanation.Section section) {
    out.println();
    out.println(Paragraph.of("", said(section.title())));
    if (section instanceof Explanation.Table table) {
      table(table);
    } else if (section instanceof Explanation.Bars bars) {
      for (int i = 0; i < bars.labels().size(); i++) {
        out.printf(
            "  %12s %s  %s%n",
            Digits.sensible(bars.lengths().get(i)),
            UnitText.of(bars.unit()),
            word(bars.labels().get(i)));
      }
    } else if (section instanceof Explanation.Curves curves) {
      curves(curves);
    }
    out.println(Paragraph.of("  ", "(" + said(section.basis()) + ")"));
  }

  private void table(Explanation.Table table) {
    List<String> header = table.columns().stream().map(this::said).toList();
    List<List<String>> rows = new ArrayList<>();
    for (List<Object> row : table.rows()) {
      rows.add(row.stream().map(this::cell).toList());
    }
    int[] widths = header.stream().mapToInt(String::length).toArray();
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    line(header, widths);
    rows.forEach(row -> line(row, widths));
  }

  private void line(List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder("  ");
    for (int i = 0; i < widths.length; i++) {
      line.append(String.format("%-" + Math.max(1, widths[i]) + "s  ", cells.get(i)));
    }
    out.println(line.toString().stripTrailing());
  }

  private void curves(Explanation.Curves curves) {
    for (Explanation.Series series : curves.series()) {
      out.println("  " + said(series.name()) + ": " + said(curves.x()) + ", " + said(curves.y()));
      int step = Math.max(1, (series.x().size() - 1) / CURVE_LINES);
      for (int i = 0; i < series.x().size(); i += step) {
        out.printf(
            "  %12s %12s%n",
            Digits.sensible(series.x().get(i)), Digits.sensible(series.y().get(i)));
      }
    }
  }

  private String cell(Object cell) {
    return cell instanceof Double number ? Digits.sensible(number) : word(cell.toString());
  }

  private String word(String word) {
    return Sentences.word(plugin, word, Locale.ENGLISH);
  }

  private String said(Text text) {
    return Sentences.of(plugin, text, Locale.ENGLISH);
  }
}
