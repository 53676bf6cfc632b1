package plyworth.workbench.chart;

import java.awt.image.RenderedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;
import org.apache.batik.ext.awt.image.spi.ImageWriter;
import org.apache.batik.ext.awt.image.spi.ImageWriterParams;

/** Writes the hatches of a chart into an SVG document, as PNG by the JDK. */
final class PngInSvg implements ImageWriter {

  @Override
  public void writeImage(RenderedImage image, OutputStream out) throws IOException {
    ImageIO.write(image, "png", out);
  }

  @Override
  public void writeImage(RenderedImage image, OutputStream out, ImageWriterParams parameters)
      throws IOException {
    writeImage(image, out);
  }

  @Override
  public String getMIMEType() {
    return "image/png";
  }
}
