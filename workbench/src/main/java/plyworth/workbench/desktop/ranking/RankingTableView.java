package plyworth.workbench.desktop.ranking;

import java.awt.BorderLayout;
import java.awt.Font;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.Columns;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.Sight;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.CalibrationWords;
import plyworth.workbench.desktop.word.Words;

/** The ranking as a table: the twin of the chart, with every weighted figure. */
public final class RankingTableView implements View {

  private final RankingTable table = new RankingTable();
  private final JTextArea note = StackPanel.words(" ", Font.PLAIN);
  private final JPanel panel = new JPanel(new BorderLayout());
  private Session session;
  private Ranked shown;
  private final Sight sight = new Sight(panel, this);
  private boolean showing;

  /** A table of nothing yet. */
  public RankingTableView() {
    table.setName("ranking-table");
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setFillsViewportHeight(true);
    table.setAutoCreateRowSorter(true);
    table.getAccessibleContext().setAccessibleName(Words.of("view.table.name"));
    table
        .getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!showing && !event.getValueIsAdjusting() && table.getSelectedRow() >= 0) {
                session.select(table.structure(table.getSelectedRow()));
              }
            });
    note.setName("table-note");
    panel.add(StackPanel.note(note), BorderLayout.NORTH);
    panel.add(new JScrollPane(table), BorderLayout.CENTER);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return table;
  }

  @Override
  public void show(Session now) {
    session = now;
    if (!sight.of(now)) {
      return;
    }
    showing = true;
    now.ranked().filter(ranked -> ranked != shown).ifPresent(this::fill);
    now.selection().structure().ifPresent(table::mark);
    showing = false;
  }

  private void fill(Ranked ranked) {
    shown = ranked;
    table.fill(ranked);
    Columns.fit(table);
    note.setText(
        Words.of("table.note", ranked.best().size(), ranked.ranking().counts().ranked())
            + "\n"
            + CalibrationWords.said(ranked, session.today()));
  }
}
