package plyworth.workbench.desktop.decision;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import org.jfree.chart.ChartMouseEvent;
import org.jfree.chart.ChartMouseListener;
import org.jfree.chart.entity.CategoryItemEntity;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.Html;
import plyworth.workbench.chart.ShareBars;
import plyworth.workbench.chart.ShareChart;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ChartCanvas;
import plyworth.workbench.desktop.part.ChartExport;
import plyworth.workbench.desktop.part.ChartPane;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.CandidateName;
import plyworth.workbench.desktop.session.LongWork;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.WorkBar;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.robustness.Acceptability;
import plyworth.workbench.robustness.Chance;
import plyworth.workbench.robustness.Doubt;
import plyworth.workbench.robustness.Reach;

/**
 * How often candidates come first while weights and inputs are uncertain: the rank acceptability.
 */
final class ChancesPart {

  private static final int MOST_DRAWS = 1000;
  private static final double PRECISION = 0.03;
  private static final int BAR_HEIGHT = 52;
  private static final int FRAME_HEIGHT = 90;

  private final StackPanel panel = new StackPanel();
  private final LongWork<DrawnChances> work;
  private final WorkBar bar;
  private final JComboBox<String> doubt = new JComboBox<>();
  private final ChartCanvas chart =
      new ChartCanvas("chances", Words.of("chances.name"), Words.of("chances.description"));
  private final ChartPane pane =
      new ChartPane("chances", chart, new ChartExport(chart, chart::getChart));
  private Session session;
  private Stability stability;
  private List<Chance> listed = List.of();

  /**
   * The part.
   *
   * @param changed told whenever more is known
   */
  ChancesPart(Runnable changed) {
    work = new LongWork<>(changed);
    bar = new WorkBar("chances", "chances.draw", this::draw, work::stop);
    doubt.setName("chances-doubt");
    for (Doubt each : Doubt.values()) {
      doubt.addItem(Words.of("chances.doubt." + each.name().toLowerCase(Locale.ROOT)));
    }
    doubt.setSelectedIndex(Doubt.AROUND.ordinal());
    bar.choice("chances.doubt", doubt);
    panel.add(bar.component());
    panel.add(pane.component());
    pane.component().setVisible(false);
    pane.whenChosen(this::select);
    chart.addChartMouseListener(new Clicks());
    chart.whenStruck("DOWN", () -> step(1));
    chart.whenStruck("UP", () -> step(-1));
  }

  JComponent component() {
    return panel;
  }

  /** What was drawn for the ranking on screen. */
  Optional<Acceptability> result() {
    return work.result().map(DrawnChances::found);
  }

  private void draw() {
    Ranked ranked = stability.ranked();
    List<Long> rivals = stability.rivals();
    Acceptability.Plan plan =
        new Acceptability.Plan(
            Doubt.values()[doubt.getSelectedIndex()], MOST_DRAWS, PRECISION, ranked.study().seed());
    work.start(progress -> DrawnChances.of(ranked, rivals, plan, progress));
  }

  /** Shows what is known; what belongs to another ranking is forgotten. */
  void show(Session now, Stability of) {
    session = now;
    if (of != stability) {
      stability = of;
      work.clear();
    }
    bar.show(work, stability != null && !stability.intervals().isEmpty());
    List<Chance> before = listed;
    listed = work.result().map(DrawnChances::listed).orElse(List.of());
    pane.component().setVisible(!listed.isEmpty());
    if (!listed.equals(before)) {
      result().ifPresent(a -> pane.show(table(), note(a)));
      redraw();
    }
  }

  /** Draws again, in the colours of the look and feel. */
  void redraw() {
    if (!listed.isEmpty()) {
      chart.setPreferredSize(
          UIScale.scale(new Dimension(200, FRAME_HEIGHT + BAR_HEIGHT * listed.size())));
      chart.setChart(ShareChart.of(bars(), Appearance.chartTheme(), selected()));
      panel.revalidate();
    }
  }

  private OptionalInt selected() {
    Ranked ranked = stability.ranked();
    return IntStream.range(0, listed.size())
        .filter(
            i ->
                session
                    .selection()
                    .structure()
                    .filter(ranked.structure(listed.get(i).path())::equals)
                    .isPresent())
        .findFirst();
  }

  private void select(int place) {
    session.select(stability.ranked().structure(listed.get(place).path()));
    redraw();
  }

  private void step(int direction) {
    if (!listed.isEmpty()) {
      int now = selected().orElse(direction > 0 ? -1 : listed.size());
      select(Math.max(0, Math.min(listed.size() - 1, now + direction)));
    }
  }

  private ShareBars bars() {
    List<ShareBars.Bar> bars = new ArrayList<>();
    for (Chance chance : listed) {
      double three = Math.max(0, chance.amongThree() - chance.first());
      double out = chance.unranked();
      bars.add(
          new ShareBars.Bar(
              name(chance),
              tip(chance),
              List.of(chance.first(), three, Math.max(0, 1 - chance.first() - three - out), out),
              chance.firstError(),
              Words.of(
                  "chances.figure",
                  CandidateName.percent(chance.first(), 1),
                  CandidateName.percent(chance.firstError(), 1))));
    }
    return new ShareBars(
        Words.of("chances.axis"),
        List.of(
            Words.of("chances.first"),
            Words.of("chances.three"),
            Words.of("chances.lower"),
            Words.of("chances.out")),
        bars);
  }

  private String name(Chance chance) {
    return called(chance) + "  " + Labels.brief(stability.ranked().structure(chance.path()));
  }

  private String called(Chance chance) {
    return work.result().map(drawn -> drawn.names().get(chance.path())).orElse("");
  }

  private String tip(Chance chance) {
    return "<html><body style='width:360px'><b>"
        + Html.escaped(called(chance))
        + "</b><br>"
        + Html.escaped(Labels.brief(stability.ranked().structure(chance.path())))
        + "<br>"
        + Html.escaped(
            Words.of(
                "chances.tip",
                CandidateName.percent(chance.first(), 1),
                CandidateName.percent(chance.firstError(), 1),
                CandidateName.percent(chance.amongThree(), 1),
                CandidateName.percent(chance.unranked(), 1),
                CandidateName.percent(chance.confidence(), 1),
                CandidateName.percent(chance.amongTen(), 1)))
        + "</body></html>";
  }

  private ChartTable table() {
    List<ChartTable.Column> columns =
        List.of(
            ChartTable.Column.words(Words.of("chances.candidate")),
            ChartTable.Column.figures(Words.of("chances.first")),
            ChartTable.Column.figures(Words.of("chances.error")),
            ChartTable.Column.figures(Words.of("chances.among-three")),
            ChartTable.Column.figures(Words.of("chances.among-ten")),
            ChartTable.Column.figures(Words.of("chances.out")),
            ChartTable.Column.figures(Words.of("chances.confidence")));
    List<List<String>> rows = new ArrayList<>();
    for (Chance chance : listed) {
      rows.add(
          List.of(
              name(chance),
              CandidateName.percent(chance.first(), 1),
              CandidateName.percent(chance.firstError(), 1),
              CandidateName.percent(chance.amongThree(), 1),
              CandidateName.percent(chance.amongTen(), 1),
              CandidateName.percent(chance.unranked(), 1),
              CandidateName.percent(chance.confidence(), 1)));
    }
    return new ChartTable(columns, rows);
  }

  private String note(Acceptability acceptability) {
    long first = acceptability.chances().stream().filter(c -> c.first() > 0).count();
    String said =
        Words.of(
            "chances.note",
            acceptability.draws(),
            acceptability.plan().seed(),
            acceptability.chances().size(),
            first,
            listed.size());
    String precision = CandidateName.percent(acceptability.plan().precision(), 0);
    return said
        + " "
        + reach(acceptability.reach())
        + " "
        + Words.of(acceptability.precise() ? "chances.precise" : "chances.imprecise", precision);
  }

  private static String reach(Reach reach) {
    if (reach.whole()) {
      return Words.of("chances.whole");
    }
    return reach.lastReaching() == 0
        ? Words.of("chances.wide", reach.last())
        : Words.of("chances.narrow", reach.last(), reach.lastReaching());
  }

  /** A click on a bar selects its candidate. */
  private final class Clicks implements ChartMouseListener {
    @Override
    public void chartMouseClicked(ChartMouseEvent event) {
      chart.requestFocusInWindow();
      if (event.getEntity() instanceof CategoryItemEntity item) {
        select(item.getDataset().getColumnIndex(item.getColumnKey()));
      }
    }

    @Override
    public void chartMouseMoved(ChartMouseEvent event) {}
  }
}
