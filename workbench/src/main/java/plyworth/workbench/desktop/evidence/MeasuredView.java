package plyworth.workbench.desktop.evidence;

import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.session.ViewCards;
import plyworth.workbench.desktop.word.Words;

/**
 * What was measured: on today's pack to begin with, on materials and candidates later, and what it
 * does to the ranking.
 */
public final class MeasuredView implements View {

  private final StackPanel sections = new StackPanel();
  private final JScrollPane scroll = new JScrollPane(sections);
  private final ViewCards cards = new ViewCards("measured-view", scroll, this);
  private final TodayPart today = new TodayPart();
  private final MaterialResultsPart materials = new MaterialResultsPart();
  private final CandidateResultsPart candidates = new CandidateResultsPart();
  private final EffectPart effect = new EffectPart(this::showAgain);
  private Session session;

  /** A view of no study yet. */
  public MeasuredView() {
    sections.setName("measured");
    sections.setBorder(BorderFactory.createEmptyBorder(6, 4, 16, 4));
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    section("today.section", today.component());
    section("material-results.section", materials.component());
    section("candidate-results.section", candidates.component());
    section("effect.section", effect.component());
  }

  private void section(String title, JComponent part) {
    JTextArea head = StackPanel.words(Words.of(title), Font.BOLD);
    head.setBorder(BorderFactory.createEmptyBorder(4, 10, 2, 10));
    sections.add(head);
    sections.add(part);
    sections.add(Box.createVerticalStrut(14));
  }

  @Override
  public JComponent component() {
    return cards.component();
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return today.first();
  }

  private void showAgain() {
    if (session != null) {
      show(session);
    }
  }

  @Override
  public void show(Session now) {
    session = now;
    if (cards.showOpen(now)) {
      today.show(now);
      materials.show(now);
      candidates.show(now);
      effect.show(now);
      sections.revalidate();
    }
  }

  /** Draws again, in the colours of the look and feel. */
  public void redraw() {
    materials.redraw();
  }
}
