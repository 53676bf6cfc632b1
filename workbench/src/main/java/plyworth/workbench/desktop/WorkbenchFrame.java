package plyworth.workbench.desktop;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.WindowConstants;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Decision;
import plyworth.shared.study.Remark;
import plyworth.workbench.desktop.brief.BriefDialog;
import plyworth.workbench.desktop.brief.NewStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.CommandList;
import plyworth.workbench.desktop.part.FileDrop;
import plyworth.workbench.desktop.part.FileTaker;
import plyworth.workbench.desktop.part.NewFile;
import plyworth.workbench.desktop.part.TextSize;
import plyworth.workbench.desktop.part.WrittenDialog;
import plyworth.workbench.desktop.session.Arrangement;
import plyworth.workbench.desktop.session.Dialogs;
import plyworth.workbench.desktop.session.ReadStudy;
import plyworth.workbench.desktop.session.Remembered;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.Words;

/** The window on one study: its frame and title, and a {@link Workspace} inside. */
final class WorkbenchFrame extends JFrame implements FileTaker {

  private static final long serialVersionUID = 1L;
  private static final int LEAST_SHOWN = 120;
  private static final Dimension LARGEST = new Dimension(1500, 940);

  private final transient Session session;
  private final transient Remembered remembered;
  private final transient Dialogs dialogs;
  private transient InquiryDialog inquiry;
  private transient Workspace workspace;
  private transient Path lastOpened;
  private String signature = "";

  WorkbenchFrame(Session session, Remembered remembered) {
    this.session = session;
    this.remembered = remembered;
    dialogs = new Dialogs(this, session);
    Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
    Dimension wished = UIScale.scale(LARGEST);
    setSize(Math.min(wished.width, screen.width - 20), Math.min(wished.height, screen.height - 40));
    setName("workbench");
    setIconImages(Emblem.images());
    setLocationByPlatform(true);
    setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    addWindowListener(new Closing());
    build();
    workspace.redraw(remembered.appearance());
    restore();
    session.listen(this::showSession);
    showSession();
  }

  /** As the window was left, where a screen still shows that place. */
  private void restore() {
    Optional<Rectangle> left = remembered.bounds().filter(WorkbenchFrame::shows);
    left.ifPresent(this::setBounds);
    if (remembered.maximised()) {
      setExtendedState(MAXIMIZED_BOTH);
    }
    workspace.arrange(
        left.flatMap(bounds -> remembered.arrangement())
            .orElseGet(() -> workspace.usual(getSize())));
  }

  /** Whether enough of a place to take hold of lies on some screen. */
  private static boolean shows(Rectangle place) {
    return Stream.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
        .map(screen -> screen.getDefaultConfiguration().getBounds().intersection(place))
        .anyMatch(part -> part.width >= LEAST_SHOWN && part.height >= LEAST_SHOWN);
  }

  private void build() {
    setLocale(Language.inForce().locale());
    inquiry = new InquiryDialog(this, session);
    workspace = new Workspace(this, session);
    setJMenuBar(workspace.menuBar());
    getContentPane().removeAll();
    getContentPane().add(workspace.component(), BorderLayout.CENTER);
    FileDrop.onto(getRootPane());
  }

  /** Pins the selected structure for comparison. */
  void pin() {
    workspace.pin();
  }

  private void showSession() {
    Path shown = session.file();
    if (shown != null && !shown.equals(lastOpened)) {
      lastOpened = shown;
      remembered.opened(shown);
    }
    getRootPane()
        .putClientProperty(
            NewFile.DOCUMENT, shown == null ? null : shown.toAbsolutePath().toFile());
    setTitle(
        session
            .history()
            .map(
                history ->
                    Words.of(
                        "frame.title",
                        history.dirty() ? Words.of("frame.unsaved") : "",
                        history.current().title(),
                        session.file().getFileName()))
            .orElseGet(() -> Words.of("frame.title.empty")));
    workspace.show();
  }

  /** Changes between light and dark. */
  void dress(Appearance appearance) {
    remembered.appearance(appearance);
    appearance.apply();
    workspace.redraw(appearance);
    showSession();
  }

  /** Changes the language of everything in the window at once. */
  void speak(Language language) {
    remembered.language(language);
    language.speak();
    Arrangement arranged = workspace.arrangement();
    furnish();
    workspace.arrange(arranged);
    showSession();
  }

  /** Makes everything in the window larger or smaller at once. */
  void size(TextSize size) {
    remembered.textSize(size);
    size.take();
    remembered.appearance().apply();
    int view = workspace.arrangement().view();
    furnish();
    workspace.arrange(workspace.usual(getSize()).on(view));
    showSession();
  }

  /** Builds everything inside anew, with what is pinned, and puts the keyboard into it. */
  private void furnish() {
    List<Structure> pinned = workspace.pinned();
    inquiry.dispose();
    build();
    workspace.pin(pinned);
    revalidate();
    workspace.redraw(remembered.appearance());
    Component first = getFocusTraversalPolicy().getDefaultComponent(this);
    if (first != null) {
      first.requestFocusInWindow();
    }
  }

  /** Asks for the reasons, and decides on the selected structure. */
  void decide() {
    Structure selected = session.selection().structure().orElseThrow();
    String before = session.study().orElseThrow().decision().reasons();
    WrittenDialog.decide(
        this,
        selected,
        before,
        (reasons, by) -> session.decide(new Decision(selected.toString(), reasons)));
  }

  /** Takes a decision back. */
  void withdraw() {
    session.decide(Decision.OPEN);
  }

  /** Asks for a remark on the selected structure. */
  void remark() {
    Structure selected = session.selection().structure().orElseThrow();
    WrittenDialog.remark(
        this,
        selected,
        signature,
        (text, by) -> {
          signature = by;
          session.remark(new Remark(selected, by, LocalDate.now().toString(), text));
        });
  }

  /** Asks for a new study and shows it in place of the one on screen. */
  void newStudy() {
    dialogs.leaving(
        () ->
            BriefDialog.create(
                this,
                session,
                session.plugins().resolveSibling("studies"),
                study -> session.begin(NewStudy.file(folder(), study.title()), study)));
  }

  private Path folder() {
    Path now = session.file();
    return now == null
        ? Path.of(System.getProperty("user.home"))
        : now.toAbsolutePath().getParent();
  }

  /** Asks for another brief of the study on screen. */
  void editBrief() {
    BriefDialog.edit(this, session, session::brief);
  }

  /** Gives the middle the whole window, or the sides their places again. */
  void alone() {
    workspace.alone();
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
    dialogs.open(path);
  }

  /**
   * Offers what was begun and never saved before the program ended, but for the study on screen.
   */
  void offerNeverSaved(Path opened) {
    remembered
        .neverSaved()
        .filter(never -> !never.equals(opened.toAbsolutePath().normalize()))
        .ifPresent(dialogs::offer);
  }

  /** Asks whether to take up what was kept of the study on screen and never saved. */
  void offer(ReadStudy read) {
    read.unsaved().ifPresent(dialogs::offer);
  }

  @Override
  public void openAfterAsking(Path path) {
    dialogs.leaving(() -> open(path));
  }

  /** Shows around. */
  void tour() {
    Tour tour = new Tour(getContentPane(), workspace::visit);
    setGlassPane(tour);
    tour.begin();
  }

  /** Shows every command, to be found by its words. */
  void findCommand() {
    new CommandList(this, workspace.commands()).open();
  }

  Remembered remembered() {
    return remembered;
  }

  void closeAfterAsking() {
    dialogs.leaving(this::leave);
  }

  private void leave() {
    boolean maximised = (getExtendedState() & MAXIMIZED_BOTH) == MAXIMIZED_BOTH;
    remembered.left(getBounds(), maximised, workspace.arrangement());
    dispose();
  }

  /** Asks before what is not saved is lost, and ends the work with the window. */
  private final class Closing extends WindowAdapter {
    @Override
    public void windowClosing(WindowEvent event) {
      closeAfterAsking();
    }

    @Override
    public void windowClosed(WindowEvent event) {
      session.close();
    }
  }
}
