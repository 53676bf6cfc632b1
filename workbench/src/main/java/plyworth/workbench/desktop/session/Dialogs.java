package plyworth.workbench.desktop.session;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Font;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JTextArea;
import javax.swing.filechooser.FileNameExtensionFilter;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** Asks for files, and before anything is lost; says what did not work. */
public final class Dialogs {

  private static final int WIDTH = 460;

  private final JFrame frame;
  private final Session session;

  /** The dialogs of a window. */
  public Dialogs(JFrame frame, Session session) {
    this.frame = frame;
    this.session = session;
  }

  /** Asks for a file and opens it. */
  public void chooseAndOpen() {
    leaving(
        () -> {
          JFileChooser chooser = chooser();
          if (chooser.showOpenDialog(frame) == JFileChooser.APPROVE_OPTION) {
            open(chooser.getSelectedFile().toPath());
          }
        });
  }

  /** Opens a study, and asks whether to take up what was kept of it and never saved. */
  public void open(Path path) {
    session.open(path, this::refused, this::offer);
  }

  /** Offers a study that was never saved before the program ended; what is not decided stays. */
  public void offer(Path neverSaved) {
    int answer =
        asked(JOptionPane.YES_NO_CANCEL_OPTION, "dialog.never-saved", neverSaved.getFileName());
    if (answer == JOptionPane.YES_OPTION) {
      open(neverSaved);
    } else if (answer == JOptionPane.NO_OPTION) {
      session.forgetUnsaved(neverSaved);
    }
  }

  /** Asks whether to take up what was kept of the study on screen and never saved. */
  public void offer(Study kept) {
    int answer = asked(JOptionPane.YES_NO_OPTION, "dialog.recover", session.file().getFileName());
    if (answer == JOptionPane.YES_OPTION) {
      session.recover(kept);
    } else if (answer == JOptionPane.NO_OPTION) {
      session.forgetUnsaved();
    }
  }

  /** Saves where the study belongs; asks where that is when it was never saved. */
  public void save() {
    save(() -> {});
  }

  private void save(Runnable then) {
    if (session.neverSaved()) {
      saveAs(then);
    } else {
      session.save(then, this::refused);
    }
  }

  /** Asks for a file and saves under its name. */
  public void saveAs() {
    saveAs(() -> {});
  }

  private void saveAs(Runnable then) {
    JFileChooser chooser = chooser();
    chooser.setSelectedFile(session.file().toFile());
    if (chooser.showSaveDialog(frame) != JFileChooser.APPROVE_OPTION) {
      return;
    }
    Path chosen = chooser.getSelectedFile().toPath();
    String name = chosen.getFileName().toString();
    boolean ends = name.toLowerCase(Locale.ROOT).endsWith(StudyFile.SUFFIX);
    Path path = ends ? chosen : chosen.resolveSibling(name + StudyFile.SUFFIX);
    boolean other = !path.toAbsolutePath().equals(session.file().toAbsolutePath());
    if (!other || !Files.exists(path) || mayReplace(path)) {
      session.saveAs(other ? path : session.file(), then, this::refused);
    }
  }

  private boolean mayReplace(Path path) {
    int answer = asked(JOptionPane.OK_CANCEL_OPTION, "dialog.replace", path.getFileName());
    return answer == JOptionPane.OK_OPTION;
  }

  private int asked(int options, String key, Object... arguments) {
    return JOptionPane.showConfirmDialog(
        frame, words(Words.of(key, arguments)), Words.of(key + ".title"), options);
  }

  /** Goes on when nothing unsaved would be lost, when it is saved, or when the user wants it so. */
  public void leaving(Runnable then) {
    session.whenWritten(() -> leave(then));
  }

  private void leave(Runnable then) {
    if (session.history().filter(StudyHistory::dirty).isEmpty()) {
      then.run();
      return;
    }
    int answer =
        asked(JOptionPane.YES_NO_CANCEL_OPTION, "dialog.unsaved", session.file().getFileName());
    if (answer == JOptionPane.YES_OPTION) {
      save(then);
    } else if (answer == JOptionPane.NO_OPTION) {
      session.forgetUnsaved();
      then.run();
    }
  }

  /** Says why something did not work. */
  void refused(String reason) {
    JOptionPane.showMessageDialog(
        frame,
        words(Reason.of(reason)),
        Words.of("dialog.failed.title"),
        JOptionPane.ERROR_MESSAGE);
  }

  /** A message, broken into lines. */
  static JTextArea words(String text) {
    JTextArea words = StackPanel.words(text, Font.PLAIN);
    words.setName("dialog-text");
    int width = UIScale.scale(WIDTH);
    words.setSize(width, Short.MAX_VALUE);
    words.setPreferredSize(new Dimension(width, words.getPreferredSize().height));
    return words;
  }

  private JFileChooser chooser() {
    JFileChooser chooser = new JFileChooser();
    chooser.setName("files");
    if (session.file() != null) {
      chooser.setCurrentDirectory(session.file().toAbsolutePath().getParent().toFile());
    }
    chooser.setFileFilter(new FileNameExtensionFilter(Words.of("dialog.choose-study"), "json"));
    return chooser;
  }
}
