package plyworth.workbench.chart;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.ext.awt.image.spi.ImageWriterRegistry;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.ui.Drawable;
import org.w3c.dom.Document;

/** Writes a chart to a file: PNG or SVG by the ending of its name. */
public final class ChartFile {

  private static final double PNG_SCALE = 2;

  private ChartFile() {}

  /** Whether a name ends in something that can be written. */
  public static boolean canWrite(Path file) {
    return ending(file).equals("png") || ending(file).equals("svg");
  }

  /**
   * Writes the chart.
   *
   * @param width width in points; a PNG has twice as many pixels each way
   * @param height height in points
   * @throws IllegalArgumentException when the name ends in neither .png nor .svg
   * @throws IOException when the file cannot be written
   */
  public static void write(Drawable chart, int width, int height, Path file) throws IOException {
    if (!canWrite(file)) {
      throw new IllegalArgumentException(
          "a chart is written as .png or .svg, not as " + file.getFileName());
    }
    Files.write(
        file, ending(file).equals("png") ? png(chart, width, height) : svg(chart, width, height));
  }

  /** The chart as the bytes of a PNG. */
  public static byte[] png(Drawable chart, int width, int height) {
    BufferedImage image =
        new BufferedImage(
            (int) (width * PNG_SCALE), (int) (height * PNG_SCALE), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(PNG_SCALE, PNG_SCALE);
    chart.draw(g, new Rectangle2D.Double(0, 0, width, height));
    g.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The chart as the bytes of an SVG document. */
  public static byte[] svg(Drawable chart, int width, int height) {
    ImageWriterRegistry.getInstance().register(new PngInSvg());
    SVGGraphics2D g = new SVGGraphics2D(emptyDocument());
    g.setSVGCanvasSize(new Dimension(width, height));
    chart.draw(g, new Rectangle2D.Double(0, 0, width, height));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStreamWriter writer = new OutputStreamWriter(bytes, StandardCharsets.UTF_8)) {
      g.stream(writer, true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return withoutDoctype(bytes.toString(StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
  }

  /** The generator names an outside document type, which readers would try to fetch. */
  private static String withoutDoctype(String svg) {
    return svg.replaceFirst("<!DOCTYPE[^>]*>\\s*", "");
  }

  private static Document emptyDocument() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument("http://www.w3.org/2000/svg", "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String ending(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.substring(name.lastIndexOf('.') + 1);
  }
}
