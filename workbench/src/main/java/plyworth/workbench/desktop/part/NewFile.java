package plyworth.workbench.desktop.part;

import java.awt.Component;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;
import plyworth.workbench.desktop.word.Words;

/**
 * A file that something is taken out of the window into.
 *
 * @param owner what the questions stand over
 * @param name name of the dialog
 * @param filter what the kinds of files are called, with their endings
 * @param proposed a name to begin with
 */
public record NewFile(
    Component owner, String name, FileNameExtensionFilter filter, String proposed) {

  /**
   * Under this property the root pane of a window knows the file of its study, beside which new
   * files are proposed. One desktop shows it in the title bar.
   */
  public static final String DOCUMENT = "Window.documentFile";

  /** Writes to a file. */
  @FunctionalInterface
  public interface Writing {
    void to(Path file) throws IOException;
  }

  /**
   * Asks for a file, and before one is replaced, and writes it; what does not work is said.
   *
   * @param completed puts an ending on a name that has none
   */
  public void write(UnaryOperator<Path> completed, Writing writing) {
    chosen().map(completed).filter(this::free).ifPresent(file -> tried(file, writing));
  }

  private Optional<Path> chosen() {
    JFileChooser chooser = new JFileChooser();
    chooser.setName(name);
    chooser.setFileFilter(filter);
    JRootPane root = SwingUtilities.getRootPane(owner);
    if (root != null && root.getClientProperty(DOCUMENT) instanceof File study) {
      chooser.setCurrentDirectory(study.getParentFile());
    }
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), proposed));
    return chooser.showSaveDialog(owner) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  private boolean free(Path file) {
    return !Files.exists(file)
        || JOptionPane.showConfirmDialog(
                owner,
                Words.of("dialog.replace", file.getFileName()),
                Words.of("dialog.replace.title"),
                JOptionPane.OK_CANCEL_OPTION)
            == JOptionPane.OK_OPTION;
  }

  private void tried(Path file, Writing writing) {
    try {
      writing.to(file);
    } catch (IOException e) {
      JOptionPane.showMessageDialog(
          owner,
          Words.of("charts.not-saved", file, e.getMessage()),
          Words.of("dialog.failed.title"),
          JOptionPane.ERROR_MESSAGE);
    }
  }
}
