package plyworth.workbench.desktop.decision;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.chart.ShareBars;
import plyworth.workbench.chart.ShareChart;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ChartCanvas;
import plyworth.workbench.desktop.part.ChartExport;
import plyworth.workbench.desktop.part.ChartPane;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Detail;
import plyworth.workbench.desktop.session.LongWork;
import plyworth.workbench.desktop.session.WorkBar;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.ranking.Weighed;
import plyworth.workbench.robustness.Sensitivity;

/** Which uncertain inputs make a figure of the selected candidate uncertain. */
final class SensitivityPart {

  private static final int POINTS = 256;
  private static final int BAR_HEIGHT = 40;
  private static final int FRAME_HEIGHT = 90;
  private static final int NARROW = 200;

  private final StackPanel panel = new StackPanel();
  private final LongWork<Sensitivity> work;
  private final WorkBar bar;
  private final JComboBox<String> figure = new JComboBox<>();
  private final ChartCanvas chart =
      new ChartCanvas(
          "sensitivity", Words.of("sensitivity.name"), Words.of("sensitivity.description"));
  private final ChartPane pane =
      new ChartPane("sensitivity", chart, new ChartExport(chart, chart::getChart));
  private List<Integer> offered = List.of();
  private boolean filling;
  private Ranked ranked;
  private Structure selected;
  private Sensitivity shown;

  /**
   * The part.
   *
   * @param changed told whenever more is known
   */
  SensitivityPart(Runnable changed) {
    work = new LongWork<>(changed);
    bar = new WorkBar("sensitivity", "sensitivity.find", this::find, work::stop);
    figure.setName("sensitivity-figure");
    figure.addActionListener(
        event -> {
          if (!filling) {
            work.clear();
            changed.run();
          }
        });
    bar.choice("sensitivity.figure", figure);
    panel.add(bar.component());
    panel.add(pane.component());
    pane.component().setVisible(false);
  }

  JComponent component() {
    return panel;
  }

  private void find() {
    Ranked now = ranked;
    Structure structure = selected;
    int chosen = figure.getSelectedIndex();
    OptionalInt criterion =
        chosen == 0 ? OptionalInt.empty() : OptionalInt.of(offered.get(chosen - 1));
    Sensitivity.Plan plan = new Sensitivity.Plan(POINTS, now.study().seed());
    work.start(
        progress ->
            Sensitivity.of(
                now.scored().compiled().prepared(),
                now.ranking().model(),
                structure,
                criterion,
                plan,
                progress));
  }

  /** Shows what is known; what belongs to another ranking or candidate is forgotten. */
  void show(Detail detail) {
    if (detail.ranked() != ranked || !detail.structure().equals(selected)) {
      ranked = detail.ranked();
      selected = detail.structure();
      work.clear();
      offer(detail.sheet());
    }
    bar.show(work, ranked.ranking().model().weighted() || figure.getSelectedIndex() > 0);
    Sensitivity found = work.result().orElse(null);
    if (found != shown) {
      shown = found;
      pane.component().setVisible(found != null);
      if (found != null) {
        Influences words = new Influences(ranked, found);
        pane.show(words.table(), words.note());
        redraw();
      }
      panel.revalidate();
    }
  }

  /** The value, and every criterion that this structure has a figure of. */
  private void offer(Sheet sheet) {
    List<Weighed> criteria = ranked.ranking().model().criteria();
    List<Integer> now =
        IntStream.range(0, criteria.size())
            .filter(c -> !Double.isNaN(sheet.outcomes().get(c).orUnknown()))
            .boxed()
            .toList();
    if (!now.equals(offered)) {
      filling = true;
      offered = now;
      figure.removeAllItems();
      figure.addItem(Words.of("sensitivity.value"));
      now.forEach(c -> figure.addItem(CriterionWords.title(ranked, criteria.get(c).criterion())));
      filling = false;
    }
  }

  /** Draws again, in the colours of the look and feel. */
  void redraw() {
    if (shown != null) {
      ShareBars bars = new Influences(ranked, shown).bars();
      int height = FRAME_HEIGHT + BAR_HEIGHT * Math.max(1, bars.bars().size());
      chart.setPreferredSize(UIScale.scale(new Dimension(NARROW, height)));
      chart.setChart(ShareChart.of(bars, Appearance.chartTheme(), OptionalInt.empty()));
      panel.revalidate();
    }
  }
}
