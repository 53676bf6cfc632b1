package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Text;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ExplanationChart;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;

/** The breakdown behind the figures: tables, bars, curves and notes, by plugin. */
final class ExplanationPanel {

  private static final int WIDTH = 420;

  private final JPanel outside = new JPanel(new BorderLayout());
  private final JPanel sections = new JPanel();

  ExplanationPanel() {
    sections.setName("explanation");
    sections.setLayout(new BoxLayout(sections, BoxLayout.Y_AXIS));
    sections.setBorder(BorderFactory.createEmptyBorder(8, 10, 8, 10));
    JScrollPane scroll = new JScrollPane(sections);
    scroll.getVerticalScrollBar().setUnitIncrement(20);
    outside.add(scroll, BorderLayout.CENTER);
  }

  JComponent component() {
    return outside;
  }

  void show(Ranked ranked, Detail detail) {
    sections.removeAll();
    for (BoundPlugin plugin : ranked.scored().compiled().prepared().bound().plugins()) {
      add(heading(said(plugin, plugin.plugin().card().title())));
      Explanation explanation = detail.explanations().get(plugin.id());
      explanation.sections().forEach(section -> section(plugin, section));
      plugin
          .plugin()
          .card()
          .cautions()
          .forEach(c -> add(words(Words.of("explanation.caution", said(plugin, c)), false)));
      sections.add(Box.createVerticalStrut(14));
    }
    sections.revalidate();
    sections.repaint();
  }

  private void section(BoundPlugin plugin, Explanation.Section section) {
    add(words(said(plugin, section.title()), true));
    if (section instanceof Explanation.Table table) {
      add(table(plugin, table));
    } else if (section instanceof Explanation.Bars bars) {
      add(
          chart(
              ExplanationChart.bars(bars, Appearance.chartTheme()),
              40 + 24 * bars.labels().size()));
    } else if (section instanceof Explanation.Curves curves) {
      add(
          chart(
              ExplanationChart.curves(curves, text -> said(plugin, text), Appearance.chartTheme()),
              220));
    }
    add(words(Words.of("explanation.basis", said(plugin, section.basis())), false));
    sections.add(Box.createVerticalStrut(8));
  }

  private void add(JComponent part) {
    part.setAlignmentX(Component.LEFT_ALIGNMENT);
    sections.add(part);
  }

  private static String said(BoundPlugin plugin, Text text) {
    return Sentences.of(plugin.plugin(), text, Locale.ENGLISH);
  }

  private static JComponent heading(String text) {
    JLabel label = new JLabel(text);
    label.setFont(label.getFont().deriveFont(Font.BOLD, label.getFont().getSize() + 3f));
    label.setBorder(BorderFactory.createEmptyBorder(4, 0, 4, 0));
    return label;
  }

  private static JComponent words(String text, boolean bold) {
    String body = bold ? "<b>" + Html.escaped(text) + "</b>" : Html.escaped(text);
    JLabel label =
        new JLabel("<html><body style='width:" + WIDTH * 3 / 4 + "px'>" + body + "</body></html>");
    label.setBorder(BorderFactory.createEmptyBorder(2, 0, 2, 0));
    return label;
  }

  private static JComponent chart(JFreeChart chart, int height) {
    ChartPanel panel = new ChartPanel(chart);
    panel.setPopupMenu(null);
    panel.setPreferredSize(new Dimension(WIDTH, height));
    panel.setMaximumSize(new Dimension(Integer.MAX_VALUE, height));
    panel.setMinimumDrawHeight(60);
    panel.setMinimumDrawWidth(200);
    panel.setMouseZoomable(false);
    return panel;
  }

  private static JComponent table(BoundPlugin plugin, Explanation.Table data) {
    DefaultTableModel model =
        new DefaultTableModel(data.columns().stream().map(c -> said(plugin, c)).toArray(), 0) {
          private static final long serialVersionUID = 1L;

          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    for (List<Object> row : data.rows()) {
      model.addRow(row.toArray());
    }
    JTable table = new JTable(model);
    table.setDefaultRenderer(Object.class, new Cell());
    table.setPreferredScrollableViewportSize(
        new Dimension(WIDTH, table.getRowHeight() * Math.min(16, Math.max(1, data.rows().size()))));
    JScrollPane scroll = new JScrollPane(table);
    scroll.setMaximumSize(new Dimension(Integer.MAX_VALUE, scroll.getPreferredSize().height));
    return scroll;
  }

  /** Numbers right-aligned with sensible digits; long texts in a tooltip as well. */
  private static final class Cell extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    protected void setValue(Object value) {
      boolean number = value instanceof Double;
      setHorizontalAlignment(number ? SwingConstants.RIGHT : SwingConstants.LEFT);
      String text = number ? Digits.sensible((Double) value) : String.valueOf(value);
      setText(text);
      setToolTipText(text);
    }
  }
}
