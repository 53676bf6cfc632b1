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

  private static final double MARKS = 3;

  /** A colour that stands back behind the text and can still be read. */
  public Color muted() {
    return between(text, background, 0.36);
  }

  /**
   * A hue that stands out from the ground: moved towards the text until its contrast is 3 to 1,
   * what WCAG 2.1 (1.4.11) asks of marks.
   */
  Color legible(Color hue) {
    Color moved = hue;
    for (double share = 0; contrast(moved, background) < MARKS && share < 1; share += 0.1) {
      moved = between(hue, text, share);
    }
    return moved;
  }

  /** The contrast of two colours, 1 to 21, as WCAG 2.1 defines it. */
  public static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color colour) {
    float[] parts = colour.getRGBColorComponents(null);
    return 0.2126 * linear(parts[0]) + 0.7152 * linear(parts[1]) + 0.0722 * linear(parts[2]);
  }

  private static double linear(double part) {
    return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
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
