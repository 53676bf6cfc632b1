package plyworth.workbench.desktop.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import plyworth.workbench.desktop.word.Words;

/**
 * Every command with its menu and keys, narrowed down by the words that are typed: each must occur
 * in the name of the command or of its menu. Enter starts the marked one.
 */
public final class CommandList {

  private static final Dimension SIZE = new Dimension(560, 420);

  /** A command and the name of its menu. */
  private record Entry(String menu, Command command) {
    boolean says(String words) {
      String text = (menu + " " + command.title()).toLowerCase(Locale.ROOT);
      return Stream.of(words.toLowerCase(Locale.ROOT).split("\\s+")).allMatch(text::contains);
    }
  }

  private final List<Entry> entries = new ArrayList<>();
  private final DefaultListModel<Entry> found = new DefaultListModel<>();
  private final JList<Entry> list = new JList<>(found);
  private final JTextField words = new JTextField();
  private final JDialog dialog;

  /** The commands of a window, by the name of their menu. */
  public CommandList(JFrame owner, Map<String, List<Command>> byMenu) {
    byMenu.forEach((menu, commands) -> commands.forEach(c -> entries.add(new Entry(menu, c))));
    dialog = new JDialog(owner, Words.of("find.title"), true);
    dialog.setName("command-list");
    words.setName("command-words");
    Typed.into(words, this::narrow);
    list.setName("commands");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new Row());
    list.setFocusable(false);
    list.getAccessibleContext().setAccessibleName(Words.of("find.list"));
    list.addMouseListener(new Clicks());
    JPanel top = new JPanel(new BorderLayout(0, 4));
    top.setBorder(BorderFactory.createEmptyBorder(12, 12, 8, 12));
    top.add(Marked.label("find.words", words), BorderLayout.NORTH);
    top.add(words, BorderLayout.CENTER);
    dialog.add(top, BorderLayout.NORTH);
    dialog.add(new JScrollPane(list), BorderLayout.CENTER);
    Keys.bind(words, "DOWN", () -> step(1));
    Keys.bind(words, "UP", () -> step(-1));
    Keys.bind(words, "ENTER", this::start);
    Keys.bind(words, "ESCAPE", dialog::dispose);
    dialog.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent event) {
            words.requestFocusInWindow();
          }
        });
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    dialog.setSize(UIScale.scale(SIZE));
    dialog.setLocationRelativeTo(owner);
    narrow();
  }

  /** Shows the list. */
  public void open() {
    dialog.setVisible(true);
  }

  private void narrow() {
    found.clear();
    entries.stream().filter(e -> e.says(words.getText().strip())).forEach(found::addElement);
    list.setSelectedIndex(0);
  }

  private void step(int step) {
    int last = found.size() - 1;
    int at = Math.max(0, Math.min(last, list.getSelectedIndex() + step));
    list.setSelectedIndex(at);
    list.ensureIndexIsVisible(at);
  }

  /** Closes first, so that the command finds the window as its user left it. */
  private void start() {
    Entry chosen = list.getSelectedValue();
    if (chosen != null && chosen.command().isEnabled()) {
      dialog.dispose();
      SwingUtilities.invokeLater(
          () ->
              chosen
                  .command()
                  .actionPerformed(new ActionEvent(dialog, ActionEvent.ACTION_PERFORMED, "")));
    }
  }

  /** Name and menu at the left, keys at the right; grey when it cannot be started now. */
  private static final class Row implements ListCellRenderer<Entry> {

    private final JPanel row = new JPanel(new BorderLayout(16, 0));
    private final JLabel name = new JLabel();
    private final JLabel keys = new JLabel("", SwingConstants.RIGHT);

    Row() {
      row.setBorder(BorderFactory.createEmptyBorder(5, 12, 5, 12));
      row.add(name, BorderLayout.CENTER);
      row.add(keys, BorderLayout.EAST);
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends Entry> list, Entry entry, int index, boolean selected, boolean focused) {
      name.setText(Words.of("find.entry", entry.command().title(), entry.menu()));
      keys.setText(entry.command().keys());
      boolean enabled = entry.command().isEnabled();
      row.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
      for (JLabel part : List.of(name, keys)) {
        part.setEnabled(enabled);
        part.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
      }
      row.getAccessibleContext().setAccessibleName(name.getText() + " " + keys.getText());
      return row;
    }
  }

  private final class Clicks extends MouseAdapter {
    @Override
    public void mouseClicked(MouseEvent event) {
      start();
    }
  }
}
