package plyworth.workbench.desktop;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.jfree.chart.ui.Drawable;
import plyworth.workbench.chart.ChartFile;
import plyworth.workbench.chart.ChartTable;

/** Takes a chart out of the window: to the clipboard, or into a file. */
final class ChartExport {

  private static final int FEWEST = 200;

  private final JComponent shown;
  private final Supplier<Drawable> drawn;

  /**
   * Takes out a chart.
   *
   * @param shown where it is shown; it is taken out at that size
   * @param drawn draws it; null while there is nothing to draw
   */
  ChartExport(JComponent shown, Supplier<Drawable> drawn) {
    this.shown = shown;
    this.drawn = drawn;
  }

  private int width() {
    return Math.max(FEWEST, shown.getWidth());
  }

  private int height() {
    return Math.max(FEWEST, shown.getHeight());
  }

  void copyPicture() {
    Drawable chart = drawn.get();
    if (chart != null) {
      byte[] png = ChartFile.png(chart, width(), height());
      try {
        PictureOnClipboard picture =
            new PictureOnClipboard(ImageIO.read(new ByteArrayInputStream(png)));
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(picture, null);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  static void copyTable(ChartTable table) {
    Toolkit.getDefaultToolkit()
        .getSystemClipboard()
        .setContents(new StringSelection(table.tabbed()), null);
  }

  /** Asks for a file and writes it; what does not work is said. */
  void save() {
    Drawable chart = drawn.get();
    JFileChooser chooser = new JFileChooser();
    chooser.setName("picture-file");
    chooser.setFileFilter(new FileNameExtensionFilter(Words.of("charts.files"), "svg", "png"));
    chooser.setSelectedFile(Path.of(Words.of("charts.file-name") + ".svg").toFile());
    if (chart == null || chooser.showSaveDialog(shown) != JFileChooser.APPROVE_OPTION) {
      return;
    }
    Path chosen = chooser.getSelectedFile().toPath();
    Path file =
        ChartFile.canWrite(chosen) ? chosen : chosen.resolveSibling(chosen.getFileName() + ".svg");
    if (!Files.exists(file) || replaces(file)) {
      write(chart, file);
    }
  }

  private boolean replaces(Path file) {
    int answer =
        JOptionPane.showConfirmDialog(
            shown,
            Words.of("dialog.replace", file.getFileName()),
            Words.of("dialog.replace.title"),
            JOptionPane.OK_CANCEL_OPTION);
    return answer == JOptionPane.OK_OPTION;
  }

  private void write(Drawable chart, Path file) {
    try {
      ChartFile.write(chart, width(), height(), file);
    } catch (IOException e) {
      JOptionPane.showMessageDialog(
          shown,
          Words.of("charts.not-saved", file, e.getMessage()),
          Words.of("dialog.failed.title"),
          JOptionPane.ERROR_MESSAGE);
    }
  }
}
