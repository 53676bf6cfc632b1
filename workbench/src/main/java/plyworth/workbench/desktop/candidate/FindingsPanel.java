package plyworth.workbench.desktop.candidate;

import java.awt.BorderLayout;
import java.awt.Color;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.UIManager;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.study.Remark;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Sentences;

/** The findings on a structure, gravest first, each with its rule and source. */
public final class FindingsPanel {

  private final JPanel panel = new JPanel(new BorderLayout());
  private final Page text = new Page("findings", Words.of("candidate.findings.name"));

  /** A panel without findings. */
  public FindingsPanel() {
    panel.add(new JScrollPane(text), BorderLayout.CENTER);
  }

  JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return text;
  }

  /** Shows what is to be said of a structure. */
  public void show(Ranked ranked, Sheet sheet) {
    text.show("<html>" + list(ranked, sheet) + "</html>");
  }

  /** Paragraphs of all that is to be said of a structure. */
  public static String list(Ranked ranked, Sheet sheet) {
    StringBuilder html = new StringBuilder();
    sheet
        .objections()
        .forEach(
            o ->
                html.append("<p style='margin-top:6'>")
                    .append(Html.escaped(Words.of("candidate.not-on-offer", Reason.of(o.reason()))))
                    .append("</p>"));
    sheet.remarks().forEach(r -> html.append(one(ranked, r)));
    if (sheet.remarks().isEmpty()) {
      html.append(Words.of("findings.none"));
    }
    ranked.study().remarks().stream()
        .filter(remark -> remark.structure().equals(sheet.structure()))
        .forEach(remark -> html.append(said(remark)));
    return html.toString();
  }

  /** A paragraph of what somebody remarked. */
  public static String said(Remark remark) {
    return "<p style='margin-top:8'><b>"
        + Html.escaped(
            Words.of(
                remark.by().isEmpty() ? "remark.of" : "remark.of.by", remark.date(), remark.by()))
        + "</b>: "
        + Html.escaped(remark.text()).replace("\n", "<br>")
        + "</p>";
  }

  /** A paragraph of one finding. */
  public static String one(Ranked ranked, Sheet.Remark remark) {
    ScoringPlugin plugin =
        ranked
            .scored()
            .compiled()
            .prepared()
            .catalog()
            .find(remark.plugin())
            .orElseThrow()
            .plugin();
    Finding finding = remark.finding();
    String rule = remark.plugin() + "/" + finding.rule();
    return "<p style='margin-top:8'><b>"
        + mark(finding.level())
        + Words.of("findings." + Choice.plain(finding.level()))
        + "</b>: "
        + Html.escaped(Sentences.of(plugin, finding.text(), Language.inForce().locale()))
        + "<br><font color='"
        + hex(Appearance.chartTheme().muted())
        + "'>"
        + Html.escaped(Words.of("findings.source", rule, finding.source()))
        + "</font></p>";
  }

  private static String mark(Finding.Level level) {
    return switch (level) {
      case BLOCKS -> coloured("✗ ", "Actions.Red");
      case WARNS -> coloured("▲ ", "Actions.Yellow");
      case INFORMS -> "· ";
    };
  }

  private static String coloured(String mark, String colour) {
    return Optional.ofNullable(UIManager.getColor(colour))
        .map(c -> "<font color='" + hex(c) + "'>" + mark + "</font>")
        .orElse(mark);
  }

  private static String hex(Color colour) {
    return String.format("#%06x", colour.getRGB() & 0xFFFFFF);
  }
}
