package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import plyworth.shared.structure.Structure;

/**
 * Everything inside the window, in one language: menus, weightings at the side, one view in the
 * middle, the selected candidate opposite. Another language takes another workspace.
 */
final class Workspace {

  private static final int SPACE_FOR_DIVIDERS = 16;

  /** Narrow enough for all views to stand in one row. */
  private static final Insets TAB_INSETS = new Insets(4, 8, 4, 8);

  private final ChartView chart = new ChartView();
  private final RankingTableView table = new RankingTableView();
  private final PositionsView positions = new PositionsView();
  private final BriefView brief = new BriefView();
  private final WeightingView weighting = new WeightingView();
  private final CandidateView candidate = new CandidateView();
  private final DecisionViews decision = new DecisionViews(this::showCommands);
  private final JTabbedPane middle = new JTabbedPane();
  private final DataViews data = new DataViews(middle);
  private final JSplitPane right;
  private final JSplitPane whole;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final Session session;
  private final Commands commands;
  private final List<View> views;

  Workspace(WorkbenchFrame frame, Session session) {
    this.session = session;
    commands = new Commands(frame, session, places());
    NoticeView notice = new NoticeView(commands.again);
    FootView foot = new FootView(commands.stop);
    MovementView movement = new MovementView();
    views =
        Stream.of(
                List.<View>of(
                    notice, weighting, chart, table, positions, brief, candidate, foot, movement),
                decision.views(),
                data.views())
            .flatMap(List::stream)
            .toList();
    JPanel top = new JPanel(new BorderLayout());
    top.add(commands.toolBar(), BorderLayout.NORTH);
    top.add(notice.component(), BorderLayout.SOUTH);
    right = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, middle(), candidate.component());
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

  private JComponent middle() {
    middle.setName("views");
    middle.putClientProperty("JTabbedPane.tabInsets", TAB_INSETS);
    middle.addTab(Words.of("view.chart"), chart.component());
    middle.addTab(Words.of("view.table"), table.component());
    middle.addTab(Words.of("view.positions"), positions.component());
    middle.addTab(Words.of("view.brief"), brief.component());
    decision.addTo(middle);
    data.addTo(middle);
    middle.setMinimumSize(new Dimension(300, 200));
    return middle;
  }

  JComponent component() {
    return panel;
  }

  JMenuBar menuBar() {
    return commands.menuBar();
  }

  /** Every command by the name of its menu. */
  Map<String, List<Command>> commands() {
    return commands.byMenu();
  }

  /** The parts of the window that can be gone to by number. */
  private List<Commands.Place> places() {
    List<Commands.Place> places = new ArrayList<>(standingPlaces());
    places.addAll(decision.places(middle));
    places.addAll(data.places(middle));
    return places;
  }

  private List<Commands.Place> standingPlaces() {
    return List.of(
        new Commands.Place("place.chart", 1, () -> bring(0, chart.target())),
        new Commands.Place("place.table", 2, () -> bring(1, table.target())),
        new Commands.Place("place.positions", 3, () -> bring(2, positions.target())),
        new Commands.Place("place.brief", 4, () -> bring(3, brief.target())),
        new Commands.Place("place.figures", 5, () -> candidate.goTo(0)),
        new Commands.Place("place.findings", 6, () -> candidate.goTo(1)),
        new Commands.Place("place.explanation", 7, () -> candidate.goTo(2)),
        new Commands.Place("place.weights", 8, () -> weighting.target().requestFocusInWindow()));
  }

  private void bring(int tab, JComponent target) {
    middle.setSelectedIndex(tab);
    target.requestFocusInWindow();
  }

  void show() {
    views.forEach(view -> view.show(session));
    showCommands();
  }

  private void showCommands() {
    commands.show(session, decision.canPin());
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
    decision.redraw();
    candidate.redraw();
  }

  /** How the parts are arranged now. */
  Arrangement arrangement() {
    return new Arrangement(
        middle.getSelectedIndex(),
        candidate.tab(),
        whole.getDividerLocation(),
        right.getDividerLocation(),
        candidate.divider());
  }

  /** Arranges the parts. */
  void arrange(Arrangement wanted) {
    middle.setSelectedIndex(Math.min(wanted.view(), middle.getTabCount() - 1));
    whole.setDividerLocation(wanted.side());
    right.setDividerLocation(wanted.middle());
    candidate.arrange(wanted.candidateTab(), wanted.candidateDivider());
  }

  /** The arrangement of a window of that width when nobody has moved anything. */
  Arrangement usual(int width) {
    int side = weighting.component().getPreferredSize().width;
    int rest = candidate.component().getPreferredSize().width;
    return new Arrangement(0, 0, side, width - side - rest - SPACE_FOR_DIVIDERS, 290);
  }
}
