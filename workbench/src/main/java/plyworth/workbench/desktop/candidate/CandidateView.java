package plyworth.workbench.desktop.candidate;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.BitSet;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import plyworth.shared.data.Choice;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.session.Detail;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.ranking.Valuation;

/** The selected structure: cross-section, figures against today's, findings, explanation. */
public final class CandidateView implements View {

  private static final int FIGURES = 0;
  private static final int FINDINGS = 1;

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JLabel head = new JLabel(Words.of("candidate.none"));
  private final CrossSection section = new CrossSection();
  private final FiguresPanel figures = new FiguresPanel();
  private final FindingsPanel findings = new FindingsPanel();
  private final ExplanationPanel explanation = new ExplanationPanel();
  private final JTabbedPane tabs = new JTabbedPane();
  private final JSplitPane split;
  private Detail shown;
  private final BitSet stale = new BitSet();

  /** A view of no candidate yet. */
  public CandidateView() {
    head.setName("candidate-head");
    head.setBorder(BorderFactory.createEmptyBorder(12, 12, 4, 12));
    JPanel padded = new JPanel(new BorderLayout());
    padded.setBorder(BorderFactory.createEmptyBorder(4, 12, 8, 12));
    padded.add(section, BorderLayout.CENTER);
    JPanel top = new JPanel(new BorderLayout());
    top.add(head, BorderLayout.NORTH);
    top.add(padded, BorderLayout.CENTER);
    tabs.setName("candidate-tabs");
    tabs.addTab(Words.of("candidate.tab.figures"), figures.component());
    tabs.addTab(Words.of("candidate.tab.findings"), findings.component());
    tabs.addTab(Words.of("candidate.tab.explanation"), explanation.component());
    tabs.addChangeListener(event -> fillTab());
    split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, top, tabs);
    split.setName("candidate-split");
    split.setResizeWeight(0.35);
    split.setBorder(BorderFactory.createEmptyBorder());
    panel.add(split, BorderLayout.CENTER);
    panel.setMinimumSize(UIScale.scale(new Dimension(320, 300)));
    panel.setPreferredSize(UIScale.scale(new Dimension(640, 700)));
  }

  @Override
  public JComponent component() {
    return panel;
  }

  /** The tab in front. */
  public int tab() {
    return tabs.getSelectedIndex();
  }

  /** Height of the cross-section, pixels. */
  public int divider() {
    return split.getDividerLocation();
  }

  /** Brings a tab to the front, and gives the cross-section its height. */
  public void arrange(int tab, int divider) {
    tabs.setSelectedIndex(Math.min(tab, tabs.getTabCount() - 1));
    split.setDividerLocation(divider);
  }

  /** Brings a tab to the front and gives it the keyboard. */
  public void goTo(int tab) {
    tabs.setSelectedIndex(tab);
    JComponent target =
        switch (tab) {
          case FIGURES -> figures.target();
          case FINDINGS -> findings.target();
          default -> explanation.target();
        };
    target.requestFocusInWindow();
  }

  @Override
  public void show(Session session) {
    Detail detail = session.selection().detail().orElse(null);
    if (detail == null) {
      head.setText(Words.of(session.stage().isEmpty() ? "candidate.none" : "candidate.waiting"));
    } else if (detail != shown) {
      boolean rangesAlone = shown != null && shown.sheet() == detail.sheet();
      shown = detail;
      figures.show(detail);
      if (!rangesAlone) {
        fill(detail);
      }
    }
  }

  private void fill(Detail detail) {
    Ranked ranked = detail.ranked();
    head.setText(heading(detail));
    section.show(detail.structure(), ranked.study().baseline(), ranked.study().materialsAtHand());
    tabs.setTitleAt(
        FINDINGS, Words.of("candidate.tab.findings.count", detail.sheet().remarks().size()));
    stale.set(FINDINGS, tabs.getTabCount());
    fillTab();
  }

  /** Fills the tab in front; the others are filled when they come to the front. */
  private void fillTab() {
    int front = tabs.getSelectedIndex();
    if (stale.get(front)) {
      stale.clear(front);
      if (front == FINDINGS) {
        findings.show(shown.ranked(), shown.sheet());
      } else {
        explanation.show(shown);
      }
    }
  }

  /** Shows everything again, in the colours of the look and feel. */
  public void redraw() {
    if (shown != null) {
      explanation.build();
      stale.set(FINDINGS);
      fillTab();
    }
  }

  private static String heading(Detail detail) {
    Sheet sheet = detail.sheet();
    Valuation worth = sheet.valuation();
    String value = String.format(Locale.ROOT, "%.3f", worth.value());
    String high = String.format(Locale.ROOT, "%.3f", worth.valueHigh());
    String said =
        value.equals(high)
            ? Words.of("candidate.value", value)
            : Words.of("candidate.value-open", value, high);
    StringBuilder html = new StringBuilder("<html><b>").append(name(detail)).append("</b>, ");
    html.append(said).append(", ").append(Words.of("group." + Choice.plain(sheet.group())));
    if (!sheet.onOffer()) {
      html.append("; ").append(Html.escaped(Words.of("candidate.off-list")));
    }
    return html.append("</html>").toString();
  }

  private static String name(Detail detail) {
    if (detail.structure().equals(detail.ranked().study().baseline())) {
      return Words.of("candidate.today");
    }
    return detail.rank().isPresent()
        ? Words.of("candidate.rank", detail.rank().getAsLong())
        : Words.of("candidate.unranked");
  }
}
