package plyworth.workbench.desktop;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import plyworth.shared.structure.Structure;
import plyworth.workbench.desktop.brief.BriefView;
import plyworth.workbench.desktop.candidate.CandidateView;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ButtonCommands;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.ViewStrip;
import plyworth.workbench.desktop.position.PositionsView;
import plyworth.workbench.desktop.ranking.ChartView;
import plyworth.workbench.desktop.ranking.MovementView;
import plyworth.workbench.desktop.ranking.RankingTableView;
import plyworth.workbench.desktop.ranking.WeightingView;
import plyworth.workbench.desktop.session.Arrangement;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Words;

/**
 * Everything inside the window, in one language: menus, weightings at the side, one view in the
 * middle, the selected candidate opposite. Another language takes another workspace.
 */
final class Workspace {

  private static final int SPACE_FOR_DIVIDERS = 16;
  private static final int SECTION_HEIGHT = 290;
  private static final double LEAST_OF_THE_MIDDLE = 0.48;
  private static final double MOST_OF_THE_SECTION = 0.33;

  private final ChartView chart = new ChartView();
  private final RankingTableView table = new RankingTableView();
  private final PositionsView positions = new PositionsView();
  private final BriefView brief;
  private final WeightingView weighting = new WeightingView();
  private final CandidateView candidate = new CandidateView();
  private final DecisionViews decision = new DecisionViews(this::showCommands);
  private final EvidenceViews evidence = new EvidenceViews();
  private final MovementView movement = new MovementView();
  private final ViewStrip middle = new ViewStrip();
  private final DataViews data = new DataViews(middle);
  private final JSplitPane right;
  private final JSplitPane whole;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final Session session;
  private final Commands commands;
  private final List<View> views;
  private Arrangement besides;

  Workspace(WorkbenchFrame frame, Session session) {
    this.session = session;
    brief = new BriefView(frame::editBrief);
    commands = new Commands(frame, session, places());
    NoticeView notice = new NoticeView(commands.again);
    FootView foot = new FootView(commands.stop);
    views =
        Stream.of(
                List.<View>of(
                    notice, weighting, chart, table, positions, brief, candidate, foot, movement),
                decision.views(),
                data.views(),
                evidence.views())
            .flatMap(List::stream)
            .toList();
    JPanel top = new JPanel(new BorderLayout());
    fillMiddle();
    JPanel row = new JPanel(new BorderLayout());
    row.add(commands.toolBar(), BorderLayout.WEST);
    row.add(middle.tabs(), BorderLayout.CENTER);
    top.add(row, BorderLayout.NORTH);
    top.add(notice.component(), BorderLayout.SOUTH);
    right = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, middle.middle(), candidate.component());
    right.setName("middle-split");
    right.setResizeWeight(1);
    right.setBorder(BorderFactory.createEmptyBorder());
    whole = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, weighting.component(), right);
    whole.setName("side-split");
    whole.setBorder(BorderFactory.createEmptyBorder());
    panel.add(top, BorderLayout.NORTH);
    panel.add(whole, BorderLayout.CENTER);
    JPanel bottom = new JPanel(new BorderLayout());
    bottom.add(movement.component(), BorderLayout.NORTH);
    bottom.add(foot.component(), BorderLayout.SOUTH);
    panel.add(bottom, BorderLayout.SOUTH);
  }

  private void fillMiddle() {
    middle.add(Words.of("view.chart"), chart.component());
    middle.add(Words.of("view.table"), table.component());
    middle.add(Words.of("view.positions"), positions.component());
    middle.add(Words.of("view.brief"), brief.component());
    decision.addTo(middle);
    data.addTo(middle);
    evidence.addTo(middle);
  }

  JComponent component() {
    return panel;
  }

  JMenuBar menuBar() {
    return commands.menuBar();
  }

  /** Every command by the name of its menu, then those of the parts of the window. */
  Map<String, List<Command>> commands() {
    Map<String, List<Command>> all = new LinkedHashMap<>(commands.byMenu());
    Stream.of(
            middle.commands(),
            beside(Marked.of("place.weights").bare(), weighting),
            beside(Words.of("find.candidate"), candidate),
            beside(Words.of("movement.name"), movement))
        .flatMap(more -> more.entrySet().stream())
        .forEach(
            more ->
                all.merge(
                    more.getKey(),
                    more.getValue(),
                    (a, b) -> Stream.concat(a.stream(), b.stream()).toList()));
    return all;
  }

  /** What stands beside the views is always in sight. */
  private static Map<String, List<Command>> beside(String title, View part) {
    return ButtonCommands.of(title, part.component(), () -> {});
  }

  /** The parts of the window that can be gone to by number. */
  private List<Commands.Place> places() {
    List<Commands.Place> places = new ArrayList<>(standingPlaces());
    places.addAll(decision.places(middle));
    places.addAll(data.places(middle));
    places.addAll(evidence.places(middle));
    return places;
  }

  private List<Commands.Place> standingPlaces() {
    return List.of(
        Commands.Place.of("place.chart", 1, middle, chart.component(), chart.target()),
        Commands.Place.of("place.table", 2, middle, table.component(), table.target()),
        new Commands.Place("place.positions", 3, this::goToPositions),
        Commands.Place.of("place.brief", 4, middle, brief.component(), brief.target()),
        new Commands.Place("place.figures", 5, () -> beside(() -> candidate.goTo(0))),
        new Commands.Place("place.findings", 6, () -> beside(() -> candidate.goTo(1))),
        new Commands.Place("place.explanation", 7, () -> beside(() -> candidate.goTo(2))),
        new Commands.Place(
            "place.weights", 8, () -> beside(weighting.target()::requestFocusInWindow)));
  }

  /** Goes to a part at the sides, which come back where the middle stands alone. */
  private void beside(Runnable going) {
    if (isAlone()) {
      alone();
      panel.validate();
    }
    going.run();
  }

  private void goToPositions() {
    middle.bring(positions.component());
    positions.goToOptions();
  }

  void show() {
    views.forEach(view -> view.show(session));
    showCommands();
  }

  private void showCommands() {
    commands.show(session, decision.canPin());
  }

  /** Goes to a place by the key of its command. */
  void visit(String place) {
    commands.visit(place);
  }

  /** Pins the selected structure for comparison. */
  void pin() {
    decision.pin();
  }

  /** What is pinned for comparison. */
  List<Structure> pinned() {
    return decision.pinned();
  }

  /** Pins structures for comparison. */
  void pin(List<Structure> structures) {
    decision.pin(structures);
  }

  /** Draws what the look and feel does not, in its colours. */
  void redraw(Appearance appearance) {
    commands.show(appearance);
    chart.redraw();
    positions.redraw();
    decision.redraw();
    evidence.redraw();
    candidate.redraw();
  }

  /** Gives the middle the whole window, or the sides their places again. */
  void alone() {
    if (isAlone()) {
      panel.remove(middle.middle());
      right.setLeftComponent(middle.middle());
      panel.add(whole, BorderLayout.CENTER);
      arrange(besides.on(middle.front()));
    } else {
      besides = arrangement();
      panel.remove(whole);
      panel.add(middle.middle(), BorderLayout.CENTER);
    }
    panel.revalidate();
    panel.repaint();
  }

  private boolean isAlone() {
    return whole.getParent() == null;
  }

  /** How the parts are arranged now; where the middle stands alone, as they were before. */
  Arrangement arrangement() {
    if (isAlone()) {
      return besides.on(middle.front());
    }
    return new Arrangement(
        middle.front(),
        candidate.tab(),
        whole.getDividerLocation(),
        right.getDividerLocation(),
        candidate.divider());
  }

  /** Arranges the parts. */
  void arrange(Arrangement wanted) {
    middle.bring(wanted.view());
    whole.setDividerLocation(wanted.side());
    right.setDividerLocation(wanted.middle());
    candidate.arrange(wanted.candidateTab(), wanted.candidateDivider());
  }

  /**
   * The arrangement of a window of that size when nobody has moved anything. Where large text makes
   * everything want more than there is, the middle and the figures still get their share.
   */
  Arrangement usual(Dimension window) {
    int side = weighting.component().getPreferredSize().width;
    int left = window.width - side - SPACE_FOR_DIVIDERS;
    int middleWidth =
        Math.max(
            left - candidate.component().getPreferredSize().width,
            (int) (left * LEAST_OF_THE_MIDDLE));
    int section =
        Math.min(UIScale.scale(SECTION_HEIGHT), (int) (window.height * MOST_OF_THE_SECTION));
    return new Arrangement(0, 0, side, middleWidth, section);
  }
}
