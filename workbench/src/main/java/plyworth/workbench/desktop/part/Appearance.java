package plyworth.workbench.desktop.part;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import java.awt.Window;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import plyworth.workbench.chart.ChartTheme;

/**
 * Light, dark or high contrast: the colours of bleached and of unbleached paper with the green of a
 * plate, or white on black.
 */
public enum Appearance {
  /** Dark text on light ground. */
  LIGHT(
      Map.of(
          "@background", "#F6F4EF",
          "@componentBackground", "#FFFDF9",
          "@foreground", "#26231F",
          "@accentColor", "#1F6F5C",
          "Table.gridColor", "#E9E4D8",
          "MenuBar.background", "#F6F4EF")),
  /** Light text on dark ground. */
  DARK(
      Map.of(
          "@background", "#262421",
          "@componentBackground", "#2E2B28",
          "@foreground", "#E6E1D8",
          "@accentColor", "#5FB39B",
          "Table.gridColor", "#3D3934",
          "MenuBar.background", "#262421")),
  /** White on black, with nothing between but what must be told apart. */
  HIGH_CONTRAST(
      Map.of(
          "@background", "#000000",
          "@componentBackground", "#000000",
          "@foreground", "#FFFFFF",
          "@accentColor", "#FFD54A",
          "@disabledForeground", "#B8B8B8",
          "Component.borderColor", "#FFFFFF",
          "Table.gridColor", "#8A8A8A",
          "MenuBar.background", "#000000"));

  private final transient Map<String, String> colours;

  Appearance(Map<String, String> colours) {
    this.colours = colours;
  }

  /** Puts this appearance on every window that is open, and on those to come. */
  public void apply() {
    FlatInterFont.installLazy();
    FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
    Map<String, String> defaults = new HashMap<>(colours);
    defaults.put("defaultFont", TextSize.inForce().font());
    FlatLaf.setGlobalExtraDefaults(defaults);
    UIManager.put("Component.focusWidth", 2);
    UIManager.put("ScrollBar.showButtons", false);
    UIManager.put("SplitPane.dividerSize", 8);
    UIManager.put("TabbedPane.tabHeight", 30);
    UIManager.put("TabbedPane.rotateTabRuns", false);
    UIManager.put("Table.showHorizontalLines", true);
    UIManager.put("Table.cellMargins", new java.awt.Insets(2, 6, 2, 6));
    if (this != LIGHT) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    Stream.of(Window.getWindows())
        .filter(Window::isDisplayable)
        .forEach(SwingUtilities::updateComponentTreeUI);
  }

  /** The chart theme that goes with what is on screen. */
  public static ChartTheme chartTheme() {
    Color background = UIManager.getColor("Panel.background");
    Color text = UIManager.getColor("Label.foreground");
    return new ChartTheme(
        background,
        text,
        mixed(background, text, 0.2),
        mixed(background, UIManager.getColor("Component.focusColor"), 0.28),
        UIManager.getFont("Label.font"));
  }

  private static Color mixed(Color most, Color some, double share) {
    return new Color(
        (int) (most.getRed() * (1 - share) + some.getRed() * share),
        (int) (most.getGreen() * (1 - share) + some.getGreen() * share),
        (int) (most.getBlue() * (1 - share) + some.getBlue() * share));
  }
}
