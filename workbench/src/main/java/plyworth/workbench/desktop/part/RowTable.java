package plyworth.workbench.desktop.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Collections;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.ListSelectionModel;
import plyworth.workbench.chart.ChartTable;

/** A table of which one row at a time is chosen; Tab leaves it, Enter or a double click acts. */
public final class RowTable extends WideTable {

  private static final long serialVersionUID = 1L;

  private static final int NARROWEST = 96;

  private final int widest;
  private transient IntConsumer chosen = row -> {};
  private transient ChartTable shown = new ChartTable(List.of(), List.of());
  private transient Wrapping wrapping;
  private boolean filling;

  /**
   * A table.
   *
   * @param widest no column gets wider for its cells; longer texts are shown in full by a tooltip
   */
  public RowTable(String name, String accessibleName, int widest) {
    super(null);
    this.widest = widest;
    setName(name);
    getAccessibleContext().setAccessibleName(accessibleName);
    setDefaultRenderer(Object.class, new ChartCells());
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    setFillsViewportHeight(true);
    FileDrop.onto(this);
    getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!filling && !event.getValueIsAdjusting() && getSelectedRow() >= 0) {
                chosen.accept(getSelectedRow());
              }
            });
  }

  /** Told which row was chosen. */
  public void whenChosen(IntConsumer listener) {
    chosen = listener;
  }

  /** Told when the chosen row is to be worked on. */
  public void whenEntered(Runnable work) {
    Keys.bind(this, "ENTER", work);
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            if (event.getClickCount() == 2 && rowAtPoint(event.getPoint()) >= 0) {
              work.run();
            }
          }
        });
  }

  /** Breaks long cells into lines rather than scroll to the side. */
  public void breakLines() {
    wrapping = new Wrapping(this, column -> true, row -> false);
  }

  private void fit() {
    Columns.fit(this, UIScale.scale(widest));
    if (wrapping != null) {
      Collections.list(getColumnModel().getColumns())
          .forEach(c -> c.setMinWidth(UIScale.scale(NARROWEST)));
      wrapping.follow();
    }
  }

  /**
   * Shows other rows.
   *
   * @param marked the row that is chosen now; -1 for none
   */
  public void show(ChartTable rows, int marked) {
    filling = true;
    if (!rows.equals(shown)) {
      shown = rows;
      setModel(new ChartRows(rows));
      fit();
    }
    if (marked < 0 || marked >= getRowCount()) {
      clearSelection();
    } else if (getSelectedRow() != marked) {
      changeSelection(marked, 0, false, false);
    }
    filling = false;
  }
}
