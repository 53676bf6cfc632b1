package plyworth.workbench.chart;

import java.awt.Color;
import java.awt.Font;

/**
 * The colours and the font that a chart takes from its surroundings.
 *
 * @param background behind everything
 * @param text text and axes
 * @param grid grid lines and outlines
 * @param selection behind the selected bar and its label
 * @param font text font at its normal size
 */
public record ChartTheme(Color background, Color text, Color grid, Color selection, Font font) {

  /** For files: dark on white. */
  public static final ChartTheme PAPER =
      new ChartTheme(
          Color.WHITE,
          new Color(0x22, 0x22, 0x22),
          new Color(0xCC, 0xCC, 0xCC),
          new Color(0xE9, 0xE4, 0xD8),
          new Font(Font.SANS_SERIF, Font.PLAIN, 12));

  /** A colour that stands back behind the text and can still be read. */
  public Color muted() {
    return between(text, background, 0.36);
  }

  /** The font, bold and some points larger. */
  Font bold(float more) {
    return font.deriveFont(Font.BOLD, font.getSize2D() + more);
  }

  private static Color between(Color from, Color to, double share) {
    return new Color(
        (int) Math.round(from.getRed() + share * (to.getRed() - from.getRed())),
        (int) Math.round(from.getGreen() + share * (to.getGreen() - from.getGreen())),
        (int) Math.round(from.getBlue() + share * (to.getBlue() - from.getBlue())));
  }
}
