package plyworth.workbench.desktop.position;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import plyworth.workbench.chart.FlowDrawing;
import plyworth.workbench.desktop.part.ChartExport;
import plyworth.workbench.desktop.part.ChartPane;
import plyworth.workbench.desktop.part.Field;
import plyworth.workbench.desktop.part.FocusFrame;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.Words;

/** The candidate graph: how candidates run from option to option. */
final class FlowView {

  private final FlowCanvas canvas = new FlowCanvas();
  private final ChartPane pane;
  private final JComboBox<String> measure = new JComboBox<>();
  private final JPanel panel = new JPanel(new BorderLayout());
  private final Consumer<Optional<FlowFigures.Choice>> chosen;
  private FlowFigures figures;
  private OptionColumns shown;
  private int marked = -1;

  /**
   * A view.
   *
   * @param chosen told what is selected
   */
  FlowView(Consumer<Optional<FlowFigures.Choice>> chosen) {
    this.chosen = chosen;
    JScrollPane scroll = new JScrollPane(canvas);
    FocusFrame.around(scroll, canvas);
    scroll.getAccessibleContext().setAccessibleName(Words.of("flows.name"));
    pane = new ChartPane("flows", scroll, new ChartExport(canvas, canvas::drawing));
    measure.addItem(Words.of("flows.all"));
    measure.addItem(Words.of("flows.ranked"));
    measure.addActionListener(event -> redraw());
    StackPanel head = new StackPanel();
    head.setBorder(BorderFactory.createEmptyBorder(4, 10, 0, 10));
    head.add(new Field("flows.measure", measure).component());
    panel.add(head, BorderLayout.NORTH);
    panel.add(pane.component(), BorderLayout.CENTER);
    canvas.whenChosen(at -> chosen.accept(at.map(box -> shown.choice(box))));
    pane.whenChosen(this::choose);
  }

  private void choose(int row) {
    marked = row;
    chosen.accept(Optional.of(shown.choice(shown.at(row))));
  }

  JComponent component() {
    return panel;
  }

  /** Shows what is counted. */
  void show(FlowFigures now) {
    if (now != figures) {
      figures = now;
      redraw();
    }
  }

  /** Draws again, in the colours of the look and feel. */
  void redraw() {
    if (figures != null) {
      shown = OptionColumns.of(figures, measure.getSelectedIndex() == 1);
      canvas.show(shown);
      String said = shown.said();
      pane.show(shown.table(), said.isEmpty() ? Words.of("flows.note") : said);
      pane.mark(shown.selected().map(this::row).orElse(-1));
    }
  }

  /** The row of a box; the one that was chosen in the table where it is about that box. */
  private int row(FlowDrawing.At box) {
    boolean about = marked >= 0 && marked < shown.rowCount();
    return about && shown.at(marked).equals(box) ? marked : shown.row(box);
  }
}
