package plyworth.workbench.desktop;

import com.formdev.flatlaf.FlatLaf;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.WindowConstants;
import javax.swing.filechooser.FileNameExtensionFilter;
import plyworth.shared.data.DataException;
import plyworth.shared.store.StudyFile;

/** The window: weightings at the side, one view in the middle, the selected candidate opposite. */
final class WorkbenchFrame extends JFrame {

  private static final long serialVersionUID = 1L;

  private final transient Session session;
  private final transient Commands commands;
  private final transient ChartView chart = new ChartView();
  private final transient CandidateView candidate = new CandidateView();
  private final transient List<View> views;

  WorkbenchFrame(Session session) {
    this.session = session;
    commands = new Commands(this, session);
    WeightingView weighting = new WeightingView();
    RankingTableView table = new RankingTableView();
    PositionsView positions = new PositionsView();
    BriefView brief = new BriefView();
    FootView foot = new FootView(commands.stop);
    views = List.of(weighting, chart, table, positions, brief, candidate, foot);
    JTabbedPane middle = new JTabbedPane();
    middle.setName("views");
    middle.addTab(Words.of("view.chart"), chart.component());
    middle.addTab(Words.of("view.table"), table.component());
    middle.addTab(Words.of("view.positions"), positions.component());
    middle.addTab(Words.of("view.brief"), brief.component());
    middle.setMinimumSize(new Dimension(300, 200));
    JSplitPane right = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, middle, candidate.component());
    right.setResizeWeight(0.6);
    JSplitPane whole = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, weighting.component(), right);
    whole.setDividerLocation(290);
    setJMenuBar(commands.menuBar());
    add(commands.toolBar(), BorderLayout.NORTH);
    add(whole, BorderLayout.CENTER);
    add(foot.component(), BorderLayout.SOUTH);
    setName("workbench");
    setSize(1500, 940);
    setLocationByPlatform(true);
    setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            closeAfterAsking();
          }
        });
    session.listen(this::showSession);
  }

  private void showSession() {
    String mark = session.history().dirty() ? Words.of("frame.unsaved") : "";
    setTitle(Words.of("frame.title", mark, session.study().title(), session.file().getFileName()));
    commands.show(session);
    views.forEach(view -> view.show(session));
  }

  /** Changes between light and dark. */
  void dress(Appearance appearance) {
    appearance.apply();
    FlatLaf.updateUI();
    chart.redraw();
    candidate.redraw(session);
  }

  void chooseAndOpen() {
    JFileChooser chooser = chooser();
    if (mayLeave() && chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
      open(chooser.getSelectedFile().toPath());
    }
  }

  /** Opens a study; what is wrong with it is said, and the one on screen stays. */
  void open(Path path) {
    tried(() -> session.open(path));
  }

  void save() {
    tried(session::save);
  }

  void saveAs() {
    JFileChooser chooser = chooser();
    chooser.setSelectedFile(session.file().toFile());
    if (chooser.showSaveDialog(this) == JFileChooser.APPROVE_OPTION) {
      Path chosen = chooser.getSelectedFile().toPath();
      String name = chosen.getFileName().toString();
      Path path =
          name.endsWith(StudyFile.SUFFIX) ? chosen : chosen.resolveSibling(name + StudyFile.SUFFIX);
      tried(() -> session.saveAs(path));
    }
  }

  void closeAfterAsking() {
    if (mayLeave()) {
      dispose();
    }
  }

  private boolean mayLeave() {
    if (session.file() == null || !session.history().dirty()) {
      return true;
    }
    int answer =
        JOptionPane.showConfirmDialog(
            this,
            Words.of("dialog.unsaved"),
            Words.of("dialog.unsaved.title"),
            JOptionPane.YES_NO_CANCEL_OPTION);
    if (answer == JOptionPane.YES_OPTION) {
      save();
      return !session.history().dirty();
    }
    return answer == JOptionPane.NO_OPTION;
  }

  private JFileChooser chooser() {
    JFileChooser chooser = new JFileChooser();
    if (session.file() != null) {
      chooser.setCurrentDirectory(session.file().toAbsolutePath().getParent().toFile());
    }
    chooser.setFileFilter(new FileNameExtensionFilter(Words.of("dialog.choose-study"), "json"));
    return chooser;
  }

  /** Work with files. */
  private interface FileWork {
    void run() throws IOException;
  }

  private void tried(FileWork work) {
    try {
      work.run();
    } catch (IOException | DataException | IllegalArgumentException e) {
      JOptionPane.showMessageDialog(
          this, e.getMessage(), Words.of("dialog.failed.title"), JOptionPane.ERROR_MESSAGE);
    }
  }
}
