package plyworth.workbench.desktop;

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
import plyworth.shared.data.DataException;
import plyworth.shared.store.StudyFile;

/** Asks for files, and before anything is lost; says what did not work. */
final class Dialogs {

  private static final int WIDTH = 460;

  private final JFrame frame;
  private final Session session;

  Dialogs(JFrame frame, Session session) {
    this.frame = frame;
    this.session = session;
  }

  void chooseAndOpen() {
    if (!mayLeave()) {
      return;
    }
    JFileChooser chooser = chooser();
    if (chooser.showOpenDialog(frame) == JFileChooser.APPROVE_OPTION) {
      session.open(chooser.getSelectedFile().toPath(), this::refused);
    }
  }

  void save() {
    tried(session::save);
  }

  void saveAs() {
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
    if (!other || !Files.exists(path) || asked("dialog.replace", path.getFileName())) {
      tried(() -> session.saveAs(other ? path : session.file()));
    }
  }

  private boolean asked(String key, Object... arguments) {
    int answer =
        JOptionPane.showConfirmDialog(
            frame,
            words(Words.of(key, arguments)),
            Words.of(key + ".title"),
            JOptionPane.OK_CANCEL_OPTION);
    return answer == JOptionPane.OK_OPTION;
  }

  /** Whether nothing unsaved would be lost, or the user wants it so. */
  boolean mayLeave() {
    if (session.history().filter(StudyHistory::dirty).isEmpty()) {
      return true;
    }
    int answer =
        JOptionPane.showConfirmDialog(
            frame,
            words(Words.of("dialog.unsaved", session.file().getFileName())),
            Words.of("dialog.unsaved.title"),
            JOptionPane.YES_NO_CANCEL_OPTION);
    return answer == JOptionPane.NO_OPTION
        || answer == JOptionPane.YES_OPTION && tried(session::save);
  }

  /** Says why something did not work. */
  void refused(String reason) {
    JOptionPane.showMessageDialog(
        frame, words(reason), Words.of("dialog.failed.title"), JOptionPane.ERROR_MESSAGE);
  }

  private boolean tried(Runnable work) {
    try {
      work.run();
      return true;
    } catch (DataException e) {
      refused(e.getMessage());
      return false;
    }
  }

  private static JTextArea words(String text) {
    JTextArea words = StackPanel.words(text, Font.PLAIN);
    words.setName("dialog-text");
    words.setSize(WIDTH, Short.MAX_VALUE);
    words.setPreferredSize(new Dimension(WIDTH, words.getPreferredSize().height));
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
