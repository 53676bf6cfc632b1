package plyworth.workbench.chart;

import java.awt.Color;
import java.awt.Font;

/**
 * The colours and the font that a chart takes from its surroundings.
 *
 * @param background behind everything
 * @param text text and axes
 * @param grid grid lines and outlines
 * @param font text font at its normal size
 */
public record ChartTheme(Color background, Color text, Color grid, Font font) {

  /** For files: dark on white. */
  public static final ChartTheme PAPER =
      new ChartTheme(
          Color.WHITE,
          new Color(0x22, 0x22, 0x22),
          new Color(0xCC, 0xCC, 0xCC),
          new Font(Font.SANS_SERIF, Font.PLAIN, 12));

  /** Whether the background is dark. */
  public boolean dark() {
    return background.getRed() * 299 + background.getGreen() * 587 + background.getBlue() * 114
        < 128_000;
  }
}
