package plyworth.workbench.desktop.decision;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jfree.chart.ChartMouseEvent;
import org.jfree.chart.ChartMouseListener;
import org.jfree.chart.entity.XYItemEntity;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.FrontMemory;
import plyworth.workbench.chart.TradeOff;
import plyworth.workbench.chart.TradeOffChart;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.part.ChartCanvas;
import plyworth.workbench.desktop.part.ChartExport;
import plyworth.workbench.desktop.part.ChartPane;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.RoomyPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.session.ViewCards;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.ranking.ValueModel;

/** Candidates by any two criteria. A click or the arrow keys select one. */
public final class TradeOffView implements View {

  private static final Dimension LEAST = new Dimension(450, 380);

  private final Background work = new Background();
  private final FrontMemory fronts = new FrontMemory();
  private final ChartCanvas chart =
      new ChartCanvas("tradeoff", Words.of("tradeoff.name"), Words.of("tradeoff.description"));
  private final ChartPane pane =
      new ChartPane("tradeoff", chart, new ChartExport(chart, chart::getChart));
  private final JComboBox<String> across = new JComboBox<>();
  private final JComboBox<String> upwards = new JComboBox<>();
  private final JComboBox<String> marks = new JComboBox<>();
  private final JComboBox<String> front = new JComboBox<>();
  private final RoomyPanel content = new RoomyPanel(new BorderLayout(), UIScale.scale(LEAST.width));
  private final ViewCards cards = new ViewCards("tradeoff-view", content.inView(), this);
  private List<String> offered = List.of();
  private boolean filling;
  private Session session;
  private Ranked asked;
  private BestList listed;
  private TradeOffPicture picture;

  /** A plot of nothing yet. */
  public TradeOffView() {
    JPanel choices = new JPanel(new GridLayout(0, 2, 16, 6));
    choices.setBorder(BorderFactory.createEmptyBorder(8, 10, 2, 10));
    add(choices, "tradeoff.across", across);
    add(choices, "tradeoff.upwards", upwards);
    add(choices, "tradeoff.marks", marks);
    add(choices, "tradeoff.front-of", front);
    front.addItem(Words.of("tradeoff.front-of.axes"));
    front.addItem(Words.of("tradeoff.front-of.weighted"));
    chart.setPreferredSize(UIScale.scale(LEAST));
    content.add(choices, BorderLayout.NORTH);
    content.add(pane.component(), BorderLayout.CENTER);
    pane.whenChosen(row -> session.select(picture.structures().get(row)));
    chart.addChartMouseListener(new Clicks());
    chart.whenStruck("RIGHT", () -> step(TradeOff.Point::x, 1));
    chart.whenStruck("LEFT", () -> step(TradeOff.Point::x, -1));
    chart.whenStruck("UP", () -> step(TradeOff.Point::y, 1));
    chart.whenStruck("DOWN", () -> step(TradeOff.Point::y, -1));
  }

  private void add(JPanel choices, String key, JComboBox<String> choice) {
    choice.setName(key);
    choice.addActionListener(
        event -> {
          if (!filling && session != null) {
            asked = null;
            show(session);
          }
        });
    choice.setPrototypeDisplayValue("");
    JPanel pair = new JPanel(new BorderLayout(0, 2));
    pair.add(Marked.label(key, choice), BorderLayout.NORTH);
    pair.add(choice, BorderLayout.CENTER);
    choices.add(pair);
  }

  @Override
  public JComponent component() {
    return cards.component();
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return chart;
  }

  /** Works out what is shown where it is in sight; the ranking may change many times before. */
  @Override
  public void show(Session now) {
    session = now;
    Ranked ranked = cards.show(now).orElse(null);
    if (ranked == null) {
      return;
    }
    fill(ranked);
    BestList kinds = now.listed();
    if (ranked != asked || listed.eachKind() != kinds.eachKind()) {
      asked = ranked;
      listed = kinds;
      TradeOffChoice choice = choice(ranked.ranking().model());
      work.run(
          stale -> TradeOffPicture.of(ranked, kinds, choice, fronts, stale),
          this::take,
          reason -> pane.show(new ChartTable(List.of(), List.of()), Reason.of(reason)));
    } else {
      mark();
    }
  }

  private void take(TradeOffPicture made) {
    picture = made;
    pane.show(made.table(), made.note());
    mark();
  }

  private void fill(Ranked ranked) {
    ValueModel model = ranked.ranking().model();
    List<String> titles =
        TradeOffChoice.offered(model).stream()
            .map(c -> CriterionWords.title(ranked, model.criteria().get(c).criterion()))
            .toList();
    if (titles.equals(offered)) {
      return;
    }
    filling = true;
    offered = titles;
    TradeOffChoice standard = TradeOffChoice.standard(ranked);
    fill(across, titles, model, standard.x());
    fill(upwards, titles, model, standard.y());
    fill(
        marks,
        Stream.concat(Stream.of(Words.of("tradeoff.none")), titles.stream()).toList(),
        model,
        standard.marks());
    if (standard.marks() != TradeOffChoice.NONE) {
      marks.setSelectedIndex(marks.getSelectedIndex() + 1);
    }
    filling = false;
  }

  private static void fill(
      JComboBox<String> choice, List<String> titles, ValueModel model, int place) {
    choice.removeAllItems();
    titles.forEach(choice::addItem);
    choice.setSelectedIndex(Math.max(0, TradeOffChoice.offered(model).indexOf(place)));
  }

  private TradeOffChoice choice(ValueModel model) {
    List<Integer> places = TradeOffChoice.offered(model);
    return new TradeOffChoice(
        places.get(across.getSelectedIndex()),
        places.get(upwards.getSelectedIndex()),
        marks.getSelectedIndex() == 0
            ? TradeOffChoice.NONE
            : places.get(marks.getSelectedIndex() - 1),
        front.getSelectedIndex() == 1);
  }

  private OptionalInt selected() {
    return session.selection().structure().map(picture::pointOf).orElse(OptionalInt.empty());
  }

  private void mark() {
    if (picture != null) {
      chart.setChart(TradeOffChart.of(picture.plot(), Appearance.chartTheme(), selected()));
      pane.mark(session.selection().structure().map(picture.structures()::lastIndexOf).orElse(-1));
    }
  }

  /** Draws again, in the colours of the look and feel. */
  public void redraw() {
    mark();
  }

  /** Selects the next point along an axis. */
  private void step(ToDoubleFunction<TradeOff.Point> along, int direction) {
    if (picture == null || picture.plot().points().isEmpty()) {
      return;
    }
    List<TradeOff.Point> points = picture.plot().points();
    List<Integer> order =
        IntStream.range(0, points.size())
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer p) -> along.applyAsDouble(points.get(p)))
                    .thenComparing(p -> p))
            .toList();
    int now = selected().isPresent() ? order.indexOf(selected().getAsInt()) : -1;
    int next = now < 0 ? (direction > 0 ? 0 : order.size() - 1) : now + direction;
    select(order.get(Math.max(0, Math.min(order.size() - 1, next))));
  }

  private void select(int point) {
    Structure structure = picture.structures().get(picture.rows().get(point));
    session.select(structure);
    mark();
  }

  /** A click on a mark selects. */
  private final class Clicks implements ChartMouseListener {
    @Override
    public void chartMouseClicked(ChartMouseEvent event) {
      chart.requestFocusInWindow();
      if (event.getEntity() instanceof XYItemEntity entity) {
        TradeOffChart.place(entity).ifPresent(TradeOffView.this::select);
      }
    }

    @Override
    public void chartMouseMoved(ChartMouseEvent event) {}
  }
}
