package plyworth.workbench.desktop.position;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;

/** The positions of a study, filled and changed. Every change is one edit that can be undone. */
final class PositionsEditor {

  private static final int TABLE_HEIGHT = 210;

  private final OptionTable table = new OptionTable(this::selected, this::dropped);
  private final PositionBar bar = new PositionBar(table);
  private final OptionForm form = new OptionForm(table);
  private final WrittenOption written = new WrittenOption(table);
  private final UnusedOption unused = new UnusedOption();
  private final JSplitPane panel;
  private Optional<FlowFigures> counted = Optional.empty();
  private Session session;
  private Offered shown;

  PositionsEditor() {
    JPanel upper = new JPanel(new BorderLayout());
    upper.add(table.component(), BorderLayout.CENTER);
    upper.add(unused.component(), BorderLayout.SOUTH);
    StackPanel lower = new StackPanel();
    lower.setBorder(BorderFactory.createEmptyBorder(4, 10, 8, 10));
    lower.add(bar.component());
    lower.add(form.component());
    lower.add(written.component());
    JScrollPane scroll = new JScrollPane(lower);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    panel = new JSplitPane(JSplitPane.VERTICAL_SPLIT, upper, scroll);
    panel.setName("positions-split");
    panel.setBorder(BorderFactory.createEmptyBorder());
    panel.setDividerLocation(UIScale.scale(TABLE_HEIGHT));
    panel.setResizeWeight(1);
  }

  JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  JComponent target() {
    return table.target();
  }

  /** Shows the positions of a study, with what is counted so far. */
  void show(Session now, Study study, Optional<FlowFigures> figures) {
    Offered offered = Offered.by(study);
    boolean other = now != session || !offered.equals(shown);
    session = now;
    shown = offered;
    counted = figures;
    table.show(study, counted);
    if (other) {
      selected();
    }
  }

  private void selected() {
    if (session != null) {
      bar.show(session);
      form.show(session);
      written.show(session);
      session.study().ifPresent(study -> unused.show(study, counted, table.at()));
    }
  }

  private void dropped(int row) {
    table.select(row);
    form.dropped();
  }
}
