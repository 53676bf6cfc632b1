package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.Locale;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import org.jfree.chart.ChartMouseEvent;
import org.jfree.chart.ChartMouseListener;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.entity.CategoryItemEntity;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.RankedBars;
import plyworth.workbench.chart.RankingBars;
import plyworth.workbench.chart.RankingChart;

/** The ranking chart. A click or the arrow keys select a candidate. */
final class ChartView implements View {

  private static final int BARS = 20;
  private static final int ROW_HEIGHT = 30;

  private final ChartPanel chart = new ChartPanel(null);
  private final JPanel panel = new JPanel(new BorderLayout());
  private Session session;
  private Ranked shown;
  private RankingBars bars;

  ChartView() {
    chart.setName("ranking-chart");
    chart.setPopupMenu(null);
    chart.setDomainZoomable(false);
    chart.setRangeZoomable(false);
    chart.setMinimumDrawWidth(300);
    chart.setMinimumDrawHeight(200);
    chart.setMaximumDrawWidth(6000);
    chart.setMaximumDrawHeight(6000);
    chart.setFocusable(true);
    chart.getAccessibleContext().setAccessibleName(Words.of("chart.name"));
    chart.getAccessibleContext().setAccessibleDescription(Words.of("chart.description"));
    chart.addChartMouseListener(
        new ChartMouseListener() {
          @Override
          public void chartMouseClicked(ChartMouseEvent event) {
            chart.requestFocusInWindow();
            if (event.getEntity() instanceof CategoryItemEntity item) {
              select(
                  bars.bars().stream()
                      .map(RankingBars.Bar::label)
                      .toList()
                      .indexOf(item.getColumnKey()));
            }
          }

          @Override
          public void chartMouseMoved(ChartMouseEvent event) {}
        });
    bind("DOWN", 1);
    bind("UP", -1);
    JScrollPane scroll = new JScrollPane(chart);
    scroll.setBorder(null);
    scroll.getVerticalScrollBar().setUnitIncrement(ROW_HEIGHT);
    panel.add(scroll, BorderLayout.CENTER);
  }

  private void bind(String key, int step) {
    chart.getInputMap().put(KeyStroke.getKeyStroke(key), key);
    chart
        .getActionMap()
        .put(
            key,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                select(Math.max(0, selectedBar() + step));
              }
            });
  }

  private int selectedBar() {
    for (int i = 0; shown != null && i < bars.bars().size(); i++) {
      if (session.selected().filter(structure(i)::equals).isPresent()) {
        return i;
      }
    }
    return -1;
  }

  private Structure structure(int bar) {
    return bar < bars.bars().size() - 1
        ? shown.structure(shown.best().get(bar).path())
        : shown.baseline().structure();
  }

  private void select(int bar) {
    if (shown != null && bar >= 0 && bar < bars.bars().size()) {
      session.select(structure(bar));
    }
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public void show(Session now) {
    session = now;
    now.ranked().filter(ranked -> ranked != shown).ifPresent(this::draw);
  }

  /** Draws again, in the colours of the look and feel. */
  void redraw() {
    if (shown != null) {
      draw(shown);
    }
  }

  private void draw(Ranked ranked) {
    shown = ranked;
    bars = RankedBars.of(ranked, BARS, Locale.ENGLISH);
    chart.setChart(RankingChart.of(bars, Appearance.chartTheme()));
    chart.setPreferredSize(new Dimension(420, 150 + ROW_HEIGHT * bars.bars().size()));
    chart.revalidate();
  }
}
