package plyworth.workbench.desktop.decision;

import java.awt.Font;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.part.ChartExport;
import plyworth.workbench.desktop.part.ChartPane;
import plyworth.workbench.desktop.part.FigureTable;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.session.ViewCards;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.robustness.Acceptability;

/** How sure the ranking is, and what would have to be true for another to lead. */
public final class RobustnessView implements View {

  private static final int WIDEST = 460;

  private final StackPanel sections = new StackPanel();
  private final JScrollPane scroll = new JScrollPane(sections);
  private final ViewCards cards = new ViewCards("robustness-view", scroll, this);
  private final Background work = new Background();
  private final JTextArea leader = StackPanel.words("", Font.PLAIN);
  private final StripCanvas strips = new StripCanvas();
  private final ChartPane stability =
      new ChartPane("stability", strips, new ChartExport(strips, strips::drawing));
  private final ChancesPart chances = new ChancesPart(this::showAgain);
  private final JTextArea agreed = StackPanel.words("", Font.PLAIN);
  private final FigureTable stakeholders =
      new FigureTable("stakeholders", Words.of("stakeholders.name"), WIDEST);
  private final TurnPart turn = new TurnPart(this::showAgain);
  private final SensitivityPart sensitivity = new SensitivityPart(this::showAgain);
  private Session session;
  private Ranked asked;
  private Stability shown;

  /** A view of no ranking yet. */
  public RobustnessView() {
    sections.setName("robustness");
    sections.setBorder(BorderFactory.createEmptyBorder(6, 4, 16, 4));
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    leader.setName("robustness-leader");
    agreed.setName("stakeholders-note");
    for (JTextArea words : List.of(leader, agreed)) {
      words.setBorder(BorderFactory.createEmptyBorder(2, 10, 4, 10));
    }
    section("robustness.leader", leader);
    section("robustness.weights", stability.component());
    section("robustness.chances", chances.component());
    section("robustness.stakeholders", agreed, stakeholders.component());
    section("robustness.turn", turn.component());
    section("robustness.sensitivity", sensitivity.component());
    strips.whenChosen(path -> session.select(shown.ranked().structure(path)));
    stakeholders.whenChosen(
        row ->
            session.select(
                shown.ranked().structure(shown.stakeholders().standings().get(row).path())));
  }

  private void section(String title, JComponent... parts) {
    JTextArea head = StackPanel.words(Words.of(title), Font.BOLD);
    head.setBorder(BorderFactory.createEmptyBorder(4, 10, 2, 10));
    sections.add(head);
    for (JComponent part : parts) {
      sections.add(part);
    }
    sections.add(Box.createVerticalStrut(14));
  }

  @Override
  public JComponent component() {
    return cards.component();
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return strips;
  }

  /** What was drawn for the ranking on screen. */
  public Optional<Acceptability> drawn() {
    boolean current =
        shown != null && session.ranked().filter(r -> r == shown.ranked()).isPresent();
    return current ? chances.result() : Optional.empty();
  }

  private void showAgain() {
    if (session != null) {
      show(session);
    }
  }

  /** Works out what a few rankings tell where it is in sight; draws are made when asked for. */
  @Override
  public void show(Session now) {
    session = now;
    Ranked ranked = cards.show(now).orElse(null);
    if (ranked == null) {
      return;
    }
    if (ranked != asked) {
      asked = ranked;
      leader.setText(Words.of("robustness.waiting"));
      work.run(
          stale -> Stability.of(ranked), this::take, reason -> leader.setText(Reason.of(reason)));
    }
    chances.show(now, shown);
    now.selection()
        .detail()
        .filter(detail -> detail.ranked() == ranked)
        .ifPresent(
            detail -> {
              turn.show(detail);
              sensitivity.show(detail);
            });
  }

  private void take(Stability found) {
    shown = found;
    leader.setText(leader(found.ranked()));
    strips.show(found);
    stability.show(
        found.table(), Words.of(found.intervals().isEmpty() ? "stability.none" : "stability.note"));
    agreed.setText(StakeholderRows.note(found));
    ChartTable rows = StakeholderRows.table(found);
    stakeholders.component().setVisible(found.stakeholders().weightings().size() > 1);
    stakeholders.show(rows);
    sections.revalidate();
    show(session);
  }

  private static String leader(Ranked ranked) {
    RankedCandidate first = ranked.best().get(0);
    String leads =
        Words.of(
            "robustness.leads",
            ranked.study().weighting(),
            Labels.brief(ranked.structure(first.path())),
            Digits.sensible(first.value()));
    if (ranked.best().size() < 2) {
      return leads + "\n" + Words.of("robustness.alone");
    }
    RankedCandidate second = ranked.best().get(1);
    return leads
        + "\n"
        + Words.of(
            "robustness.second",
            Labels.brief(ranked.structure(second.path())),
            Digits.sensible(Math.max(0, first.value() - second.value())));
  }

  /** Draws again, in the colours of the look and feel. */
  public void redraw() {
    strips.repaint();
    if (shown != null) {
      chances.redraw();
      sensitivity.redraw();
    }
  }
}
