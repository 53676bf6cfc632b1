package plyworth.workbench.desktop.session;

import java.awt.Component;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import plyworth.shared.store.TextFile;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** Asks for a file of text and reads it off the event thread; what is wrong with it is said. */
public final class ReadFile {

  private final Background work = new Background();
  private final Component owner;

  /**
   * Files to read.
   *
   * @param owner what the questions stand over
   */
  public ReadFile(Component owner) {
    this.owner = owner;
  }

  /**
   * Asks for a file with comma-separated values.
   *
   * @param session whose folder is looked into first
   * @param reading makes something of text and name of the file, off the event thread
   * @param done takes what was made
   */
  public <T> void csv(Session session, Reading<T> reading, Consumer<T> done) {
    JFileChooser chooser = new JFileChooser();
    chooser.setName("files");
    if (session.file() != null) {
      chooser.setCurrentDirectory(session.file().toAbsolutePath().getParent().toFile());
    }
    chooser.setFileFilter(new FileNameExtensionFilter(Words.of("files.csv"), "csv"));
    if (chooser.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION) {
      Path file = chooser.getSelectedFile().toPath();
      String name = file.getFileName().toString();
      work.run(stale -> reading.of(TextFile.read(file), name), done, this::refused);
    }
  }

  /** Makes something of a text. */
  @FunctionalInterface
  public interface Reading<T> {
    T of(String text, String name);
  }

  private void refused(String reason) {
    JOptionPane.showMessageDialog(
        owner,
        Dialogs.words(Reason.of(reason)),
        Words.of("dialog.failed.title"),
        JOptionPane.ERROR_MESSAGE);
  }
}
