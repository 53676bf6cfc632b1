package plyworth.workbench.desktop.decision;

import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.GridLayout;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.candidate.FindingsPanel;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.FigureTable;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.session.ViewCards;
import plyworth.workbench.desktop.word.Words;

/** Up to three pinned structures side by side with today's. */
public final class CompareView implements View {

  private static final int MOST = 3;
  private static final int WIDEST = 260;

  private final StackPanel sections = new StackPanel();
  private final JScrollPane scroll = new JScrollPane(sections);
  private final ViewCards cards = new ViewCards("compare-view", scroll, this);
  private final Background work = new Background();
  private final Runnable changed;
  private final Command pin = Command.of("compare.pin", null, this::pin);
  private final JButton pinning = pin.named(new JButton(pin), "button:");
  private final JPanel tools = new JPanel();
  private final JTextArea note = StackPanel.words("", Font.PLAIN);
  private final SectionRow stacks = new SectionRow();
  private final FigureTable figures = new FigureTable("compare", Words.of("compare.name"), WIDEST);
  private final Page findings = new Page("compare-findings", Words.of("candidate.findings.name"));
  private final List<Structure> pinned = new ArrayList<>();
  private Session session;
  private Path file;
  private Ranked asked;
  private List<Structure> askedOf = List.of();
  private Comparison shown;

  /**
   * The view.
   *
   * @param changed told when a structure is pinned or unpinned
   */
  public CompareView(Runnable changed) {
    this.changed = changed;
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    sections.setName("compare-sheet");
    tools.setLayout(new FlowLayout(FlowLayout.LEADING, 8, 6));
    still(findings);
    note.setName("compare-note");
    note.setBorder(BorderFactory.createEmptyBorder(2, 10, 6, 10));
    JPanel framed = new JPanel(new GridLayout(1, 1));
    framed.setBorder(BorderFactory.createEmptyBorder(2, 10, 8, 10));
    framed.add(stacks);
    sections.add(tools);
    sections.add(note);
    sections.add(framed);
    sections.add(figures.component());
    sections.add(findings);
    showTools();
  }

  /** New text does not scroll the view. */
  private static void still(Page page) {
    ((DefaultCaret) page.getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
  }

  @Override
  public JComponent component() {
    return cards.component();
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return stacks;
  }

  /** What is pinned. */
  public List<Structure> pinned() {
    return List.copyOf(pinned);
  }

  /** Pins structures in place of those that are. */
  public void pin(List<Structure> structures) {
    pinned.clear();
    pinned.addAll(structures);
  }

  /** Whether the selected structure can be pinned. */
  public boolean canPin() {
    return session != null
        && session
            .selection()
            .structure()
            .filter(s -> pinned.size() < MOST && !pinned.contains(s) && !isToday(s))
            .isPresent();
  }

  private boolean isToday(Structure structure) {
    return session.study().filter(s -> s.baseline().equals(structure)).isPresent();
  }

  /** Pins the selected structure. */
  public void pin() {
    if (canPin()) {
      pinned.add(session.selection().structure().orElseThrow());
      changed();
    }
  }

  private void unpin(Structure structure) {
    pinned.remove(structure);
    changed();
  }

  private void changed() {
    show(session);
    changed.run();
  }

  /** Scores the pinned ones where they are in sight. */
  @Override
  public void show(Session now) {
    session = now;
    if (file != null && !file.equals(now.file())) {
      pinned.clear();
    }
    file = now.file();
    pin.setEnabled(canPin());
    Ranked ranked = cards.show(now).orElse(null);
    if (ranked == null) {
      return;
    }
    if (ranked != asked || !pinned.equals(askedOf)) {
      asked = ranked;
      askedOf = List.copyOf(pinned);
      List<Structure> structures = askedOf;
      work.run(stale -> Comparison.of(ranked, structures), this::take, note::setText);
    }
  }

  private void take(Comparison comparison) {
    shown = comparison;
    showTools();
    note.setText(
        pinned.isEmpty()
            ? Words.of("compare.none")
            : Words.of("compare.note", comparison.ranked().study().weighting()));
    stacks.show(comparison);
    figures.show(comparison.table());
    findings.show(FindingColumns.of(comparison));
    sections.revalidate();
    sections.repaint();
  }

  private void showTools() {
    tools.removeAll();
    tools.add(pinning);
    for (Structure structure : pinned) {
      JButton away = new JButton(Words.of("compare.unpin", name(structure)));
      away.setName("unpin:" + pinned.indexOf(structure));
      away.addActionListener(event -> unpin(structure));
      tools.add(away);
    }
    tools.revalidate();
    tools.repaint();
  }

  private String name(Structure structure) {
    return shown.columns().stream()
        .filter(column -> column.sheet().structure().equals(structure))
        .map(Comparison.Column::name)
        .findFirst()
        .orElse("…");
  }

  /** Draws again, in the colours of the look and feel. */
  public void redraw() {
    stacks.repaint();
    if (shown != null) {
      findings.show(FindingColumns.of(shown));
    }
  }

  /** The findings of each structure in a column of its own. */
  private static final class FindingColumns {

    static String of(Comparison comparison) {
      StringBuilder html = new StringBuilder("<html><table width='100%'><tr valign='top'>");
      int share = 100 / comparison.columns().size();
      for (Comparison.Column column : comparison.columns()) {
        html.append("<td width='").append(share).append("%'><b>");
        html.append(Html.escaped(column.name())).append("</b>");
        html.append(FindingsPanel.list(comparison.ranked(), column.sheet())).append("</td>");
      }
      return html.append("</tr></table></html>").toString();
    }
  }
}
