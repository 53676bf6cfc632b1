package plyworth.workbench.desktop.part;

import java.awt.FlowLayout;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import plyworth.workbench.chart.ChartTable;

/** What every chart can do, as a row of small buttons: be copied as picture or table, be saved. */
public final class ChartTools {

  private ChartTools() {}

  /**
   * The buttons.
   *
   * @param name begins their names
   * @param table the same as a table
   * @param before buttons that stand before them
   */
  public static JComponent of(
      String name, ChartExport export, Supplier<ChartTable> table, AbstractButton... before) {
    JPanel tools = new WrappingRow(FlowLayout.TRAILING, 6, 2);
    tools.setBorder(BorderFactory.createEmptyBorder(4, 0, 0, 0));
    for (AbstractButton button : before) {
      tools.add(button);
    }
    tools.add(button(name, Command.of("charts.copy-picture", null, export::copyPicture)));
    tools.add(
        button(
            name, Command.of("charts.copy-table", null, () -> ChartExport.copyTable(table.get()))));
    tools.add(button(name, Command.of("charts.save", null, export::save)));
    for (var tool : tools.getComponents()) {
      ((JComponent) tool).putClientProperty("FlatLaf.styleClass", "small");
    }
    return tools;
  }

  private static JButton button(String name, Command command) {
    return command.named(new JButton(command), name + ":");
  }
}
