package plyworth.workbench.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.TexturePaint;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/**
 * The fill of each part of a bar: a hue and a hatch, so that no two parts differ by colour alone.
 *
 * <p>Hues are spread in lightness as well as in hue, so that they stay apart for red-green and
 * blue-yellow weak eyes.
 */
public final class PartPaint {

  private static final Color[] HUES = {
    new Color(0x2F, 0x5D, 0x8C),
    new Color(0xD9, 0x8E, 0x32),
    new Color(0x5B, 0xA5, 0x8C),
    new Color(0xA6, 0x4D, 0x6E),
    new Color(0x8D, 0xB6, 0xD9),
    new Color(0x6E, 0x5F, 0x2B),
    new Color(0xC9, 0xB2, 0xD6),
    new Color(0x3D, 0x3D, 0x4F),
  };

  private static final int CELL = 8;

  private PartPaint() {}

  /** The fill of part number {@code index}. */
  public static Paint of(int index) {
    Color hue = hue(index);
    int hatch = index % 4;
    return hatch == 0 ? hue : texture(hue, hatch);
  }

  /** The bare hue of part number {@code index}. */
  public static Color hue(int index) {
    return HUES[index % HUES.length];
  }

  private static Paint texture(Color hue, int hatch) {
    BufferedImage cell = new BufferedImage(CELL, CELL, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = cell.createGraphics();
    g.setColor(hue);
    g.fillRect(0, 0, CELL, CELL);
    g.setColor(mixed(hue));
    switch (hatch) {
      case 1 -> {
        g.draw(new Line2D.Double(0, CELL - 1, CELL - 1, 0));
      }
      case 2 -> g.fillRect(CELL / 2 - 1, CELL / 2 - 1, 2, 2);
      default -> g.draw(new Line2D.Double(0, CELL / 2.0, CELL, CELL / 2.0));
    }
    g.dispose();
    return new TexturePaint(cell, new Rectangle2D.Double(0, 0, CELL, CELL));
  }

  private static Color mixed(Color hue) {
    return new Color(
        (hue.getRed() + 255) / 2, (hue.getGreen() + 255) / 2, (hue.getBlue() + 255) / 2);
  }
}
