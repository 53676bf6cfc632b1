package plyworth.workbench.desktop.candidate;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.JComponent;
import org.jfree.chart.plot.CategoryMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Text;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.ExplanationChart;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ChartCanvas;
import plyworth.workbench.desktop.part.ChartExport;
import plyworth.workbench.desktop.part.ChartPane;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/**
 * A chart of an explanation. The arrow keys go from point to point and say its figures; so does the
 * pointer.
 */
public final class ExplanationFigure {

  private static final int BAR_HEIGHT = 34;
  private static final int FRAME_HEIGHT = 60;
  private static final int CURVES_HEIGHT = 240;
  private static final int NARROW = 200;

  private final ChartCanvas canvas;
  private final ChartPane pane;
  private int series;
  private int place = -1;

  private ExplanationFigure(String title, int height) {
    canvas = new ChartCanvas("explanation-chart", title, Words.of("explanation.chart.description"));
    canvas.setPreferredSize(UIScale.scale(new Dimension(NARROW, height)));
    pane = new ChartPane("explanation-chart", canvas, new ChartExport(canvas, canvas::getChart));
  }

  /** Bars. */
  public static JComponent of(Explanation.Bars bars, String title) {
    int count = bars.labels().size();
    ExplanationFigure figure = new ExplanationFigure(title, FRAME_HEIGHT + BAR_HEIGHT * count);
    figure.canvas.setChart(ExplanationChart.bars(bars, Appearance.chartTheme()));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      rows.add(List.of(bars.labels().get(i), Digits.sensible(bars.lengths().get(i))));
    }
    figure.pane.show(
        new ChartTable(
            List.of(
                ChartTable.Column.words(title),
                ChartTable.Column.figures(UnitText.of(bars.unit()))),
            rows),
        "");
    figure.canvas.whenStruck("DOWN", () -> figure.go(bars, 1));
    figure.canvas.whenStruck("UP", () -> figure.go(bars, -1));
    return figure.pane.component();
  }

  private void go(Explanation.Bars bars, int step) {
    place = Math.max(0, Math.min(bars.labels().size() - 1, place + step));
    var plot = canvas.getChart().getCategoryPlot();
    plot.clearDomainMarkers();
    CategoryMarker marker =
        new CategoryMarker(
            plot.getDataset().getColumnKey(place),
            Appearance.chartTheme().selection(),
            new BasicStroke(1));
    marker.setAlpha(1);
    plot.addDomainMarker(marker, Layer.BACKGROUND);
    pane.say(
        ExplanationChart.reading(bars, place)
            .orElseGet(() -> Words.of("explanation.bar.unknown", bars.labels().get(place))));
  }

  /**
   * Curves.
   *
   * @param said makes a sentence of a text
   */
  public static JComponent of(Explanation.Curves curves, Function<Text, String> said) {
    ExplanationFigure figure = new ExplanationFigure(said.apply(curves.title()), CURVES_HEIGHT);
    figure.canvas.setChart(ExplanationChart.curves(curves, said, Appearance.chartTheme()));
    List<List<String>> rows = new ArrayList<>();
    for (Explanation.Series series : curves.series()) {
      for (int i = 0; i < series.x().size(); i++) {
        rows.add(
            List.of(
                said.apply(series.name()),
                Digits.sensible(series.x().get(i)),
                Digits.sensible(series.y().get(i))));
      }
    }
    figure.pane.show(
        new ChartTable(
            List.of(
                ChartTable.Column.words(Words.of("explanation.curve")),
                ChartTable.Column.figures(said.apply(curves.x())),
                ChartTable.Column.figures(said.apply(curves.y()))),
            rows),
        "");
    figure.canvas.whenStruck("RIGHT", () -> figure.go(curves, said, 0, 1));
    figure.canvas.whenStruck("LEFT", () -> figure.go(curves, said, 0, -1));
    figure.canvas.whenStruck("DOWN", () -> figure.go(curves, said, 1, 0));
    figure.canvas.whenStruck("UP", () -> figure.go(curves, said, -1, 0));
    return figure.pane.component();
  }

  private void go(Explanation.Curves curves, Function<Text, String> said, int other, int step) {
    series = Math.max(0, Math.min(curves.series().size() - 1, series + other));
    Explanation.Series read = curves.series().get(series);
    place = Math.max(0, Math.min(read.x().size() - 1, place + step));
    XYPlot plot = canvas.getChart().getXYPlot();
    Color text = Appearance.chartTheme().text();
    plot.setDomainCrosshairPaint(text);
    plot.setRangeCrosshairPaint(text);
    plot.setDomainCrosshairVisible(true);
    plot.setRangeCrosshairVisible(true);
    plot.setDomainCrosshairValue(read.x().get(place));
    plot.setRangeCrosshairValue(read.y().get(place));
    pane.say(ExplanationChart.reading(curves, said, series, place));
  }
}
