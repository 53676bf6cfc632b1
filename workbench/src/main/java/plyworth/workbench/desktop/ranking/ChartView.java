package plyworth.workbench.desktop.ranking;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import org.jfree.chart.ChartMouseEvent;
import org.jfree.chart.ChartMouseListener;
import org.jfree.chart.entity.CategoryItemEntity;
import org.jfree.chart.entity.CategoryLabelEntity;
import org.jfree.chart.entity.ChartEntity;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTheme;
import plyworth.workbench.chart.RankedBars;
import plyworth.workbench.chart.RankingBars;
import plyworth.workbench.chart.RankingChart;
import plyworth.workbench.desktop.part.Ahead;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ChartCanvas;
import plyworth.workbench.desktop.part.ChartExport;
import plyworth.workbench.desktop.part.ChartPicture;
import plyworth.workbench.desktop.part.ChartTools;
import plyworth.workbench.desktop.session.Pipeline;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.Words;

/** The ranking chart. A click or the arrow keys select a candidate. */
public final class ChartView implements View {

  private static final int BARS = Pipeline.KINDS;
  private static final int NARROWEST = 280;
  private static final int STEP = 58;

  private final ChartCanvas chart =
      new ChartCanvas("ranking-chart", Words.of("chart.name"), Words.of("chart.description"));
  private final JScrollPane scroll = new JScrollPane(chart);
  private final JLabel empty = new JLabel("", SwingConstants.CENTER);
  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final Ahead<ChartPicture> ahead = new Ahead<>(this::show);
  private Session session;
  private Ranked shown;
  private BestList listed;
  private RankingBars bars;
  private Optional<String> marked = Optional.empty();

  /** A chart of nothing yet. */
  public ChartView() {
    chart.addChartMouseListener(new Clicks());
    chart.whenStruck("DOWN", () -> step(1));
    chart.whenStruck("UP", () -> step(-1));
    chart.whenStruck("PAGE_DOWN", () -> step(5));
    chart.whenStruck("PAGE_UP", () -> step(-5));
    chart.whenStruck("HOME", () -> step(-BARS - 1));
    chart.whenStruck("END", () -> step(BARS + 1));
    scroll
        .getViewport()
        .addComponentListener(
            new ComponentAdapter() {
              @Override
              public void componentResized(ComponentEvent event) {
                if (shown != null) {
                  fit();
                }
              }
            });
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(UIScale.scale(STEP));
    empty.setName("chart-empty");
    JPanel without = new JPanel(new BorderLayout());
    without.add(empty, BorderLayout.CENTER);
    panel.add(without, "empty");
    JPanel framed = new JPanel(new BorderLayout());
    framed.add(
        ChartTools.of(
            "ranking", new ChartExport(chart, chart::getChart), () -> RankingFigures.of(bars)),
        BorderLayout.NORTH);
    framed.add(scroll, BorderLayout.CENTER);
    panel.add(framed, "chart");
  }

  @Override
  public JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return chart;
  }

  private void step(int step) {
    if (shown != null) {
      int last = bars.bars().size() - 1;
      int now = marked.map(this::indexOf).orElse(step > 0 ? -1 : last + 1);
      select(Math.max(0, Math.min(last, now + step)));
    }
  }

  private int indexOf(String name) {
    return bars.bars().stream().map(RankingBars.Bar::name).toList().indexOf(name);
  }

  /** Today's structure stands first, then those listed. */
  private Structure structure(int bar) {
    return bar == 0
        ? shown.baseline().structure()
        : shown.structure(listed.entries().get(bar - 1).candidate().path());
  }

  private void select(int bar) {
    session.select(structure(bar));
    marked = Optional.of(bars.bars().get(bar).name());
    redraw();
    int height = chart.getHeight() / (bars.bars().size() + 2);
    chart.scrollRectToVisible(new Rectangle(0, height * bar, 1, height * 3));
  }

  @Override
  public void show(Session now) {
    session = now;
    Ranked ranked = now.ranked().orElse(null);
    if (ranked == null) {
      shown = null;
      empty.setText(nothing(now));
      cards.show(panel, "empty");
    } else {
      boolean first = shown == null;
      boolean other = ranked != shown || listed.eachKind() != now.eachKind();
      shown = ranked;
      listed = now.listed();
      if (other) {
        bars = RankedBars.of(ranked, listed, now.today(), BARS, Language.inForce().locale());
      }
      Optional<String> mark = marked.filter(this::isSelected).or(this::selectedBar);
      if (other || !mark.equals(marked)) {
        marked = mark;
        redraw();
      }
      cards.show(panel, "chart");
      if (first && panel.isShowing()) {
        chart.requestFocusInWindow();
      }
    }
  }

  private static String nothing(Session now) {
    if (!now.failure().isEmpty()) {
      return Words.of("chart.failed");
    }
    return now.stage().map(Pipeline.Stage::text).orElse(Words.of("chart.no-study"));
  }

  private boolean isSelected(String name) {
    int bar = indexOf(name);
    return bar >= 0 && session.selection().structure().filter(structure(bar)::equals).isPresent();
  }

  private Optional<String> selectedBar() {
    return bars.bars().stream()
        .map(RankingBars.Bar::name)
        .filter(this::isSelected)
        .reduce((first, second) -> second);
  }

  /** As high as it takes to show every structure whole at the width that there is. */
  private void fit() {
    fit(RankingChart.height(bars, Appearance.chartTheme(), width()));
  }

  private void fit(int height) {
    chart.setPreferredSize(new Dimension(UIScale.scale(NARROWEST), height));
    chart.revalidate();
  }

  private int width() {
    return Math.max(UIScale.scale(NARROWEST), scroll.getViewport().getWidth());
  }

  /**
   * Draws again, in the colours of the look and feel: off the event thread where one is seen
   * already, since drawing thirty structures takes longer than a picture of the display.
   */
  public void redraw() {
    if (shown != null && chart.getChart() != null && chart.isShowing()) {
      ahead.ask(drawing());
    } else if (shown != null) {
      chart.setChart(RankingChart.of(bars, Appearance.chartTheme(), marked));
      fit();
    }
  }

  private Supplier<ChartPicture> drawing() {
    RankingBars drawn = bars;
    Optional<String> mark = marked;
    ChartTheme theme = Appearance.chartTheme();
    int width = width();
    int least = scroll.getViewport().getHeight();
    Insets frame = chart.getInsets();
    double scale = chart.getGraphicsConfiguration().getDefaultTransform().getScaleX();
    return () -> {
      int height = Math.max(least, RankingChart.height(drawn, theme, width));
      Dimension size =
          new Dimension(width - frame.left - frame.right, height - frame.top - frame.bottom);
      return ChartPicture.of(RankingChart.of(drawn, theme, mark), size, scale);
    };
  }

  private void show(ChartPicture picture) {
    if (shown != null) {
      Insets frame = chart.getInsets();
      chart.show(picture);
      fit(picture.size().height + frame.top + frame.bottom);
    }
  }

  /** A click on a bar, on its structure or on its name selects. */
  private final class Clicks implements ChartMouseListener {
    @Override
    public void chartMouseClicked(ChartMouseEvent event) {
      chart.requestFocusInWindow();
      ChartEntity entity = event.getEntity();
      Object name =
          entity instanceof CategoryItemEntity item
              ? item.getColumnKey()
              : entity instanceof CategoryLabelEntity label ? label.getKey() : null;
      if (name != null && shown != null) {
        select(indexOf(name.toString()));
      }
    }

    @Override
    public void chartMouseMoved(ChartMouseEvent event) {}
  }
}
