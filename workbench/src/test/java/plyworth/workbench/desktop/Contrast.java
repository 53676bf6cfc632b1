package plyworth.workbench.desktop;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.UIManager;
import plyworth.workbench.chart.ChartTheme;
import plyworth.workbench.desktop.part.Appearance;

/** How well text stands out, by the contrast ratio of WCAG 2.2, success criterion 1.4.3. */
final class Contrast {

  private static final double LEAST = 4.5;

  /** Text and ground of what the window is made of, by keys of the look and feel. */
  private static final List<Map.Entry<String, String>> PAIRS =
      List.of(
          Map.entry("Label.foreground", "Panel.background"),
          Map.entry("Button.foreground", "Button.background"),
          Map.entry("TextField.foreground", "TextField.background"),
          Map.entry("ComboBox.foreground", "ComboBox.background"),
          Map.entry("Table.foreground", "Table.background"),
          Map.entry("Table.selectionForeground", "Table.selectionBackground"),
          Map.entry("Table.selectionInactiveForeground", "Table.selectionInactiveBackground"),
          Map.entry("TableHeader.foreground", "TableHeader.background"),
          Map.entry("List.selectionForeground", "List.selectionBackground"),
          Map.entry("List.selectionInactiveForeground", "List.selectionInactiveBackground"),
          Map.entry("Menu.foreground", "MenuBar.background"),
          Map.entry("MenuItem.foreground", "PopupMenu.background"),
          Map.entry("MenuItem.selectionForeground", "MenuItem.selectionBackground"),
          Map.entry("TabbedPane.foreground", "TabbedPane.background"),
          Map.entry("EditorPane.foreground", "EditorPane.background"),
          Map.entry("ToolTip.foreground", "ToolTip.background"));

  private Contrast() {}

  /** Pairs of text and ground that are too alike in the look and feel of now. */
  static List<String> faint() {
    List<String> faint = new ArrayList<>();
    for (Map.Entry<String, String> pair : PAIRS) {
      note(
          faint,
          pair.toString(),
          UIManager.getColor(pair.getKey()),
          UIManager.getColor(pair.getValue()));
    }
    ChartTheme chart = Appearance.chartTheme();
    note(faint, "text of a chart", chart.text(), chart.background());
    note(faint, "text of a chart that stands back", chart.muted(), chart.background());
    note(faint, "text on a selected bar", chart.text(), chart.selection());
    return faint;
  }

  private static void note(List<String> faint, String what, Color text, Color ground) {
    double ratio = ratio(text, ground);
    if (!(ratio >= LEAST)) {
      faint.add(what + ": " + ratio);
    }
  }

  static double ratio(Color a, Color b) {
    double lighter = Math.max(luminance(a), luminance(b));
    double darker = Math.min(luminance(a), luminance(b));
    return (lighter + 0.05) / (darker + 0.05);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
