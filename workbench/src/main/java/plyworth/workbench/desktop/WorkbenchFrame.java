package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import javax.swing.JFrame;
import javax.swing.WindowConstants;

/** The window on one study: its frame and title, and a {@link Workspace} inside. */
final class WorkbenchFrame extends JFrame {

  private static final long serialVersionUID = 1L;
  private static final Dimension LARGEST = new Dimension(1500, 940);

  private final transient Session session;
  private final transient Remembered remembered;
  private final transient Dialogs dialogs;
  private transient InquiryDialog inquiry;
  private transient Workspace workspace;

  WorkbenchFrame(Session session, Remembered remembered) {
    this.session = session;
    this.remembered = remembered;
    dialogs = new Dialogs(this, session);
    Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
    setSize(
        Math.min(LARGEST.width, screen.width - 20), Math.min(LARGEST.height, screen.height - 40));
    setName("workbench");
    setIconImages(Emblem.images());
    setLocationByPlatform(true);
    setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    addWindowListener(new Closing());
    build();
    workspace.arrange(workspace.usual(getWidth()));
    session.listen(this::showSession);
    showSession();
  }

  private void build() {
    setLocale(Language.inForce().locale());
    inquiry = new InquiryDialog(this, session);
    workspace = new Workspace(this, session);
    setJMenuBar(workspace.menuBar());
    getContentPane().removeAll();
    getContentPane().add(workspace.component(), BorderLayout.CENTER);
  }

  private void showSession() {
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
    workspace.show(session);
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
    inquiry.dispose();
    build();
    revalidate();
    workspace.arrange(arranged);
    workspace.redraw(remembered.appearance());
    showSession();
    Component first = getFocusTraversalPolicy().getDefaultComponent(this);
    if (first != null) {
      first.requestFocusInWindow();
    }
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
