package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.WindowConstants;

/** The window: weightings at the side, one view in the middle, the selected candidate opposite. */
final class WorkbenchFrame extends JFrame {

  private static final long serialVersionUID = 1L;
  private static final Dimension LARGEST = new Dimension(1500, 940);

  private final transient Session session;
  private final transient Commands commands;
  private final transient Dialogs dialogs;
  private final transient InquiryDialog inquiry;
  private final transient ChartView chart = new ChartView();
  private final transient RankingTableView table = new RankingTableView();
  private final transient PositionsView positions = new PositionsView();
  private final transient BriefView brief = new BriefView();
  private final transient WeightingView weighting = new WeightingView();
  private final transient CandidateView candidate = new CandidateView();
  private final transient DecisionViews decision = new DecisionViews(this::showCommands);
  private final JTabbedPane middle = new JTabbedPane();
  private final transient List<View> views;

  WorkbenchFrame(Session session) {
    this.session = session;
    dialogs = new Dialogs(this, session);
    inquiry = new InquiryDialog(this, session);
    commands = new Commands(this, session);
    NoticeView notice = new NoticeView(commands.again);
    FootView foot = new FootView(commands.stop);
    views =
        Stream.concat(
                Stream.of(notice, weighting, chart, table, positions, brief, candidate, foot),
                decision.views().stream())
            .toList();
    JPanel top = new JPanel(new BorderLayout());
    top.add(commands.toolBar(), BorderLayout.NORTH);
    top.add(notice.component(), BorderLayout.SOUTH);
    Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
    setSize(
        Math.min(LARGEST.width, screen.width - 20), Math.min(LARGEST.height, screen.height - 40));
    setJMenuBar(commands.menuBar());
    add(top, BorderLayout.NORTH);
    add(body(), BorderLayout.CENTER);
    add(foot.component(), BorderLayout.SOUTH);
    setName("workbench");
    setTitle(Words.of("frame.title.empty"));
    setIconImages(Emblem.images());
    setLocationByPlatform(true);
    setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    addWindowListener(new Closing());
    session.listen(this::showSession);
    showSession();
  }

  private JComponent body() {
    middle.setName("views");
    middle.addTab(Words.of("view.chart"), chart.component());
    middle.addTab(Words.of("view.table"), table.component());
    middle.addTab(Words.of("view.positions"), positions.component());
    middle.addTab(Words.of("view.brief"), brief.component());
    decision.addTo(middle);
    middle.setMinimumSize(new Dimension(300, 200));
    JSplitPane right = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, middle, candidate.component());
    right.setName("middle-split");
    right.setResizeWeight(1);
    right.setDividerLocation(
        getWidth()
            - weighting.component().getPreferredSize().width
            - candidate.component().getPreferredSize().width
            - 2 * right.getDividerSize());
    right.setBorder(BorderFactory.createEmptyBorder());
    JSplitPane whole = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, weighting.component(), right);
    whole.setName("side-split");
    whole.setBorder(BorderFactory.createEmptyBorder());
    whole.setDividerLocation(weighting.component().getPreferredSize().width);
    return whole;
  }

  /** The parts of the window that can be gone to by number. */
  List<Commands.Place> places() {
    List<Commands.Place> places = new ArrayList<>(standingPlaces());
    places.addAll(decision.places(middle));
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

  private void showCommands() {
    commands.show(session, decision.canPin());
  }

  /** Pins the selected structure for comparison. */
  void pin() {
    decision.pin();
  }

  private void showSession() {
    session
        .history()
        .ifPresent(
            history ->
                setTitle(
                    Words.of(
                        "frame.title",
                        history.dirty() ? Words.of("frame.unsaved") : "",
                        history.current().title(),
                        session.file().getFileName())));
    views.forEach(view -> view.show(session));
    showCommands();
  }

  /** Changes between light and dark. */
  void dress(Appearance appearance) {
    appearance.apply();
    commands.show(appearance);
    chart.redraw();
    decision.redraw();
    candidate.redraw();
    showSession();
  }

  void chooseAndOpen() {
    dialogs.chooseAndOpen();
  }

  /** Asks for a structure and says why it is not offered or not ranked. */
  void inquire() {
    inquiry.open();
  }

  void save() {
    dialogs.save();
  }

  void saveAs() {
    dialogs.saveAs();
  }

  /** Opens a study; what is wrong with it is said, and the one on screen stays. */
  void open(Path path) {
    session.open(path, dialogs::refused);
  }

  void closeAfterAsking() {
    if (dialogs.mayLeave()) {
      dispose();
    }
  }

  /** Asks before what is not saved is lost. */
  private final class Closing extends WindowAdapter {
    @Override
    public void windowClosing(WindowEvent event) {
      closeAfterAsking();
    }
  }
}
