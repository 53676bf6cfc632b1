package plyworth.workbench.desktop.part;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.jfree.chart.ui.Drawable;
import plyworth.workbench.chart.ChartFile;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.word.Words;

/** Takes a chart out of the window: to the clipboard, or into a file. */
public final class ChartExport {

  private static final int FEWEST = 200;

  private final JComponent shown;
  private final Supplier<Drawable> drawn;

  /**
   * Takes out a chart.
   *
   * @param shown where it is shown; it is taken out at that size
   * @param drawn draws it; null while there is nothing to draw
   */
  public ChartExport(JComponent shown, Supplier<Drawable> drawn) {
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
    if (chart != null) {
      new NewFile(
              shown,
              "picture-file",
              new FileNameExtensionFilter(Words.of("charts.files"), "svg", "png"),
              Words.of("charts.file-name") + ".svg")
          .write(ChartExport::completed, file -> ChartFile.write(chart, width(), height(), file));
    }
  }

  private static Path completed(Path file) {
    return ChartFile.canWrite(file) ? file : file.resolveSibling(file.getFileName() + ".svg");
  }
}
