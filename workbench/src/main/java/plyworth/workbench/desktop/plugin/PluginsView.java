package plyworth.workbench.desktop.plugin;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import plyworth.shared.data.Choice;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Words;

/** Every plugin that was found or is asked for, and the chosen one in full. */
public final class PluginsView implements View {

  private static final Dimension NARROW = new Dimension(170, 100);

  private final DefaultListModel<PluginEntry> entries = new DefaultListModel<>();
  private final JList<PluginEntry> list = new JList<>(entries);
  private final PluginSheet sheet = new PluginSheet();
  private final JPanel panel = new JPanel(new BorderLayout());
  private Session session;
  private boolean filling;

  /** A view of no plugins yet. */
  public PluginsView() {
    list.setName("plugins");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new Row());
    list.getAccessibleContext().setAccessibleName(Words.of("plugins.name"));
    list.addListSelectionListener(
        event -> {
          if (!filling && !event.getValueIsAdjusting()) {
            showChosen();
          }
        });
    JScrollPane left = new JScrollPane(list);
    left.setMinimumSize(UIScale.scale(NARROW));
    JScrollPane right = new JScrollPane(sheet.component());
    right.setBorder(BorderFactory.createEmptyBorder());
    right.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, right);
    split.setName("plugins-split");
    split.setBorder(BorderFactory.createEmptyBorder());
    panel.setName("plugins-view");
    panel.add(split, BorderLayout.CENTER);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return list;
  }

  @Override
  public void show(Session now) {
    session = now;
    List<PluginEntry> all = PluginEntry.all(now);
    if (!List.of(entries.toArray()).equals(all)) {
      filling = true;
      int chosen = Math.max(0, list.getSelectedIndex());
      entries.clear();
      entries.addAll(all);
      list.setSelectedIndex(Math.min(chosen, entries.size() - 1));
      filling = false;
    }
    showChosen();
  }

  private void showChosen() {
    PluginEntry chosen = list.getSelectedValue();
    if (chosen != null) {
      sheet.show(session, chosen);
    }
  }

  /** Title and below it how the plugin stands, in words and by a sign. */
  private static final class Row implements ListCellRenderer<PluginEntry> {

    private final JPanel row = new JPanel(new BorderLayout(0, 1));
    private final JLabel title = new JLabel();
    private final JLabel state = new JLabel();

    Row() {
      row.setBorder(BorderFactory.createEmptyBorder(6, 12, 6, 12));
      state.putClientProperty("FlatLaf.styleClass", "small");
      row.add(title, BorderLayout.NORTH);
      row.add(state, BorderLayout.SOUTH);
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends PluginEntry> list,
        PluginEntry entry,
        int index,
        boolean selected,
        boolean focused) {
      title.setText(entry.title());
      state.setText(sign(entry.state()) + Words.of("plugins.state." + Choice.plain(entry.state())));
      row.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
      for (JLabel part : List.of(title, state)) {
        part.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
      }
      row.getAccessibleContext().setAccessibleName(title.getText() + ", " + state.getText());
      return row;
    }

    private static String sign(PluginEntry.State state) {
      return switch (state) {
        case AT_WORK -> "● ";
        case LEFT_OUT -> "○ ";
        case FAULTY, REFUSED -> "✗ ";
        case MISSING -> "? ";
      };
    }
  }
}
