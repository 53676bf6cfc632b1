package plyworth.workbench.desktop.position;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;

/** What may stand where, how the candidates run through it, and what limits they must keep to. */
public final class PositionsView implements View {

  private final JTextArea note = StackPanel.words(" ", Font.PLAIN);
  private final PositionsEditor editor = new PositionsEditor();
  private final FlowView flows = new FlowView(this::chosen);
  private final LimitsView limits = new LimitsView();
  private final JTabbedPane tabs = new JTabbedPane();
  private final JPanel panel = new JPanel(new BorderLayout());
  private final FlowWork work = new FlowWork(this::showAgain);
  private Session session;

  /** A view of no study yet. */
  public PositionsView() {
    note.setName("positions-count");
    tabs.setName("positions-tabs");
    add("positions.tab.options", editor.component());
    add("positions.tab.flows", flows.component());
    add("positions.tab.limits", limits.component());
    panel.add(StackPanel.note(note), BorderLayout.NORTH);
    panel.add(tabs, BorderLayout.CENTER);
  }

  private void add(String key, JComponent part) {
    Marked marked = Marked.of(key);
    tabs.addTab(marked.text(), part);
    tabs.setMnemonicAt(tabs.getTabCount() - 1, marked.key());
    tabs.setDisplayedMnemonicIndexAt(tabs.getTabCount() - 1, marked.at());
  }

  @Override
  public JComponent component() {
    return panel;
  }

  /** Brings the options to the front and gives them the keyboard. */
  public void goToOptions() {
    tabs.setSelectedIndex(0);
    editor.target().requestFocusInWindow();
  }

  @Override
  public void show(Session now) {
    session = now;
    now.study().ifPresent(study -> show(now, study));
  }

  private void show(Session now, Study study) {
    work.follow(study, now.ranked().orElse(null));
    Optional<FlowFigures> counted = work.of(study);
    String said = work.said(study);
    if (!said.equals(note.getText())) {
      note.setText(said);
      panel.revalidate();
    }
    editor.show(now, study, counted);
    counted.ifPresent(flows::show);
    limits.show(now);
  }

  private void showAgain() {
    if (session != null) {
      show(session);
    }
  }

  private void chosen(Optional<FlowFigures.Choice> choice) {
    work.choose(choice);
    showAgain();
  }

  /** Draws again, in the colours of the look and feel. */
  public void redraw() {
    flows.redraw();
  }
}
