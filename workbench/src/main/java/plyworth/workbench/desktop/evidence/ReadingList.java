package plyworth.workbench.desktop.evidence;

import java.awt.FlowLayout;
import java.awt.Font;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.ButtonCommands;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.FigureTable;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.Words;

/** Readings as rows, with buttons to add one, change it and take it out. */
final class ReadingList {

  private static final int WIDEST = 300;

  private final StackPanel panel = new StackPanel();
  private final JTextArea note = StackPanel.words("", Font.PLAIN);
  private final FigureTable table;
  private final Command add;
  private final JButton adding;
  private final Command change;
  private final Command remove;
  private final IntConsumer chosen;
  private ChartTable shown = new ChartTable(List.of(), List.of());
  private int row = -1;

  /**
   * A list.
   *
   * @param key of its words, and beginning of the names of its parts
   * @param added adds a reading
   * @param changed changes that of a row
   * @param removed takes out that of a row
   * @param chosen told which row is chosen; -1 for none
   */
  ReadingList(
      String key, Runnable added, IntConsumer changed, IntConsumer removed, IntConsumer chosen) {
    this.chosen = chosen;
    table = new FigureTable(key, Words.of(key + ".name"), WIDEST);
    add = Command.of(key + ".add", null, added);
    change = Command.of("measured.change", null, () -> changed.accept(row));
    remove = Command.of("measured.remove", null, () -> removed.accept(row));
    JPanel tools = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 4));
    adding = add.named(new JButton(add), "button:");
    tools.add(adding);
    for (Command command : List.of(change, remove)) {
      tools.add(command.named(new JButton(command), key + ":"));
      command.setEnabled(false);
    }
    note.setName(key + "-note");
    note.setBorder(BorderFactory.createEmptyBorder(2, 10, 4, 10));
    ButtonCommands.place(panel, Words.of(key + ".name"));
    panel.add(note);
    panel.add(tools);
    panel.add(table.component());
    table.component().setVisible(false);
    table.whenChosen(this::choose);
    table.whenStruck("ENTER", () -> start(change));
    table.whenStruck("DELETE", () -> start(remove));
  }

  private void start(Command command) {
    if (row >= 0) {
      command.actionPerformed(null);
    }
  }

  private void choose(int now) {
    row = now;
    change.setEnabled(now >= 0);
    remove.setEnabled(now >= 0);
    chosen.accept(now);
  }

  JComponent component() {
    return panel;
  }

  /** What the keyboard begins with: the button that adds a reading. */
  JComponent first() {
    return adding;
  }

  /** Which row is chosen; -1 for none. */
  int chosen() {
    return row;
  }

  /** Says something else of the same readings. */
  void say(String said) {
    note.setText(said);
    panel.revalidate();
  }

  /** Whether a reading can be added now. */
  void canAdd(boolean can) {
    add.setEnabled(can);
  }

  /** Shows readings; the chosen row stays chosen where it can, a new one is chosen. */
  void show(ChartTable readings, String said) {
    note.setText(said);
    if (readings.equals(shown)) {
      return;
    }
    boolean more = readings.rows().size() > shown.rows().size();
    shown = readings;
    table.show(readings);
    int last = readings.rows().size() - 1;
    table.component().setVisible(last >= 0);
    int wanted = more && row >= 0 ? last : Math.min(row, last);
    if (wanted >= 0) {
      table.choose(wanted);
    }
    choose(wanted);
    panel.revalidate();
  }
}
