package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Valuation;

/** The selected structure: cross-section, figures against today's, findings, explanation. */
final class CandidateView implements View {

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JLabel head = new JLabel(Words.of("candidate.none"));
  private final CrossSection section = new CrossSection();
  private final FiguresPanel figures = new FiguresPanel();
  private final FindingsPanel findings = new FindingsPanel();
  private final ExplanationPanel explanation = new ExplanationPanel();
  private Detail shown;

  CandidateView() {
    head.setName("candidate-head");
    head.setBorder(BorderFactory.createEmptyBorder(12, 12, 4, 12));
    JPanel top = new JPanel(new BorderLayout());
    JPanel padded = new JPanel(new BorderLayout());
    padded.setBorder(BorderFactory.createEmptyBorder(4, 12, 8, 12));
    padded.add(section, BorderLayout.CENTER);
    top.add(head, BorderLayout.NORTH);
    top.add(padded, BorderLayout.CENTER);
    JTabbedPane tabs = new JTabbedPane();
    tabs.setName("candidate-tabs");
    tabs.addTab(Words.of("candidate.tab.figures"), figures.component());
    tabs.addTab(Words.of("candidate.tab.findings"), findings.component());
    tabs.addTab(Words.of("candidate.tab.explanation"), explanation.component());
    JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, top, tabs);
    split.setResizeWeight(0.35);
    split.setDividerLocation(300);
    split.setBorder(null);
    panel.add(split, BorderLayout.CENTER);
    panel.setMinimumSize(new Dimension(300, 300));
    panel.setPreferredSize(new Dimension(480, 700));
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public void show(Session session) {
    Ranked ranked = session.ranked().orElse(null);
    if (ranked == null) {
      return;
    }
    session.selected().ifPresent(s -> section.show(s, ranked.study().materialsAtHand()));
    Detail detail = session.detail().orElse(null);
    if (detail == null) {
      head.setText(Words.of("explanation.loading"));
    } else if (detail != shown) {
      shown = detail;
      head.setText(heading(ranked, detail.sheet()));
      figures.show(ranked, detail);
      findings.show(ranked, detail.sheet());
      explanation.show(ranked, detail);
    }
  }

  /** Shows the explanation again, in the colours of the look and feel. */
  void redraw(Session session) {
    session
        .ranked()
        .ifPresent(ranked -> session.detail().ifPresent(d -> explanation.show(ranked, d)));
  }

  private static String heading(Ranked ranked, Sheet sheet) {
    Valuation worth = sheet.valuation();
    String value = String.format(Locale.ROOT, "%.3f", worth.value());
    boolean open = worth.valueHigh() - worth.value() > 1e-9;
    String said =
        open
            ? Words.of(
                "candidate.value-open",
                value,
                String.format(Locale.ROOT, "%.3f", worth.valueHigh()))
            : Words.of("candidate.value", value);
    StringBuilder html =
        new StringBuilder("<html><b>").append(rank(ranked, sheet)).append("</b>  ");
    html.append(said).append(", ").append(standing(sheet.group()));
    sheet.objections().stream()
        .limit(2)
        .forEach(
            o ->
                html.append("<br>")
                    .append(Html.escaped(Words.of("candidate.not-on-offer", o.reason()))));
    return html.append("</html>").toString();
  }

  private static String rank(Ranked ranked, Sheet sheet) {
    if (sheet.structure().equals(ranked.study().baseline())) {
      return Words.of("candidate.today");
    }
    for (int i = 0; i < ranked.best().size(); i++) {
      if (sheet.path().isPresent() && ranked.best().get(i).path() == sheet.path().getAsLong()) {
        return Words.of("candidate.rank", i + 1);
      }
    }
    return "";
  }

  private static String standing(Group group) {
    return Words.of("group." + plyworth.shared.data.Choice.plain(group));
  }
}
