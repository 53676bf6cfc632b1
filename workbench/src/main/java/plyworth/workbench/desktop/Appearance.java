package plyworth.workbench.desktop;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import javax.swing.UIManager;
import plyworth.workbench.chart.ChartTheme;

/** Light or dark. */
enum Appearance {
  /** Dark text on light ground. */
  LIGHT,
  /** Light text on dark ground. */
  DARK;

  /** Puts this appearance on every window. */
  void apply() {
    FlatInterFont.installLazy();
    FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
    UIManager.put("Component.focusWidth", 2);
    UIManager.put("ScrollBar.showButtons", false);
    UIManager.put("TabbedPane.tabHeight", 30);
    UIManager.put("Table.showHorizontalLines", true);
    if (this == DARK) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    FlatLaf.updateUI();
  }

  /** The chart theme that goes with what is on screen. */
  static ChartTheme chartTheme() {
    Color background = UIManager.getColor("Panel.background");
    Color text = UIManager.getColor("Label.foreground");
    Color grid =
        new Color(
            (background.getRed() * 3 + text.getRed()) / 4,
            (background.getGreen() * 3 + text.getGreen()) / 4,
            (background.getBlue() * 3 + text.getBlue()) / 4);
    return new ChartTheme(background, text, grid, UIManager.getFont("Label.font"));
  }
}
