package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JEditorPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.host.Sentences;

/** The findings on a structure, gravest first, each with its rule and source. */
final class FindingsPanel {

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JEditorPane text = new JEditorPane("text/html", "");

  FindingsPanel() {
    text.setName("findings");
    text.setEditable(false);
    text.putClientProperty(JEditorPane.HONOR_DISPLAY_PROPERTIES, true);
    text.setBorder(BorderFactory.createEmptyBorder(8, 10, 8, 10));
    text.getAccessibleContext().setAccessibleName(Words.of("candidate.tab.findings"));
    panel.add(new JScrollPane(text), BorderLayout.CENTER);
  }

  JComponent component() {
    return panel;
  }

  void show(Ranked ranked, Sheet sheet) {
    StringBuilder html = new StringBuilder("<html>");
    sheet.remarks().forEach(r -> html.append(one(ranked, r)));
    if (sheet.remarks().isEmpty()) {
      html.append(Words.of("findings.none"));
    }
    text.setText(html.append("</html>").toString());
    text.setCaretPosition(0);
  }

  private static String one(Ranked ranked, Sheet.Remark remark) {
    ScoringPlugin plugin =
        ranked
            .scored()
            .compiled()
            .prepared()
            .catalog()
            .find(remark.plugin())
            .orElseThrow()
            .plugin();
    String mark =
        switch (remark.finding().level()) {
          case BLOCKS -> "✗ ";
          case WARNS -> "⚠ ";
          case INFORMS -> "· ";
        };
    String level = Words.of("findings." + Choice.plain(remark.finding().level()));
    String rule = remark.plugin() + "/" + remark.finding().rule();
    return "<p><b>"
        + mark
        + level
        + "</b>: "
        + Html.escaped(Sentences.of(plugin, remark.finding().text(), Locale.ENGLISH))
        + "<br><i>"
        + Html.escaped(Words.of("findings.source", rule, remark.finding().source()))
        + "</i></p>";
  }
}
