package plyworth.workbench.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.TexturePaint;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/**
 * The fill of a layer wherever structures are drawn: a hue and a grain for each material family.
 */
public final class LayerFill {

  private static final int CELL = 6;

  private LayerFill() {}

  /** The fill of a layer whose material is of that family. */
  public static Paint of(String family) {
    return switch (family) {
      case "paper" -> grain(new Color(0xD8, 0xC3, 0x9A), new Color(0xB0, 0x97, 0x66), 1);
      case "aluminium-foil" -> grain(new Color(0x5E, 0x66, 0x70), new Color(0x8E, 0x97, 0xA2), 2);
      case "polyethylene" -> new Color(0x9C, 0xC4, 0xE4);
      case "polypropylene" -> grain(new Color(0x86, 0xB8, 0x9B), new Color(0xA9, 0xD3, 0xBA), 2);
      case "polyester" -> grain(new Color(0xC5, 0xA3, 0xC9), new Color(0xE0, 0xC8, 0xE3), 3);
      case "polyamide", "evoh", "pvoh" ->
          grain(new Color(0xE3, 0xA5, 0x7C), new Color(0xF1, 0xC9, 0xAD), 3);
      case "acid-copolymer", "ionomer", "eva", "acrylonitrile" ->
          grain(new Color(0x6F, 0x9D, 0xC9), new Color(0x9C, 0xC4, 0xE4), 1);
      case "ink" -> new Color(0x8B, 0x2F, 0x4B);
      case "adhesive" -> new Color(0xC9, 0xB4, 0x45);
      case "biopolymer", "cellulose" ->
          grain(new Color(0xA8, 0xB9, 0x6B), new Color(0xC9, 0xD6, 0x9B), 1);
      default -> new Color(0xA0, 0xA0, 0xA8);
    };
  }

  private static Paint grain(Color ground, Color line, int kind) {
    BufferedImage cell = new BufferedImage(CELL, CELL, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = cell.createGraphics();
    g.setColor(ground);
    g.fillRect(0, 0, CELL, CELL);
    g.setColor(line);
    switch (kind) {
      case 1 -> {
        g.fillRect(1, 1, 2, 1);
        g.fillRect(4, 4, 2, 1);
      }
      case 2 -> g.drawLine(0, CELL / 2, CELL, CELL / 2);
      default -> g.drawLine(0, CELL - 1, CELL - 1, 0);
    }
    g.dispose();
    return new TexturePaint(cell, new Rectangle2D.Double(0, 0, CELL, CELL));
  }
}
