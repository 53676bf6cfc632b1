package plyworth.workbench.desktop.material;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import plyworth.workbench.analysis.RefusedLine;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.DialogSize;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.RowTable;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** Shows what a file would change, line by line, before it is taken over or left. */
final class PreviewDialog {

  private static final Dimension SIZE = new Dimension(1000, 600);
  private static final int WIDEST = 420;
  private static final int WIDEST_REASON = 640;
  private static final int REFUSED_HEIGHT = 170;

  private final JDialog dialog;

  /**
   * A dialog.
   *
   * @param said what the file is, and how much it would change
   * @param changes what would change; without rows when nothing would
   * @param taken told when it is to be taken over
   */
  PreviewDialog(
      Component over, String said, ChartTable changes, List<RefusedLine> refused, Runnable taken) {
    dialog =
        new JDialog(
            SwingUtilities.getWindowAncestor(over),
            Words.of("preview.title"),
            JDialog.ModalityType.APPLICATION_MODAL);
    dialog.setName("preview");
    JTextArea head = StackPanel.words(said, Font.PLAIN);
    head.setName("preview-said");
    StackPanel top = StackPanel.note(head);
    RowTable table = new RowTable("preview-changes", Words.of("preview.changes"), WIDEST);
    table.breakLines();
    table.show(changes, -1);
    JPanel body = new JPanel(new BorderLayout(0, 4));
    body.setBorder(BorderFactory.createEmptyBorder(0, 12, 0, 12));
    body.add(new JScrollPane(table), BorderLayout.CENTER);
    if (!refused.isEmpty()) {
      body.add(refused(refused), BorderLayout.SOUTH);
    }
    dialog.add(top, BorderLayout.NORTH);
    dialog.add(body, BorderLayout.CENTER);
    dialog.add(buttons(!changes.rows().isEmpty(), taken), BorderLayout.SOUTH);
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    dialog.setSize(DialogSize.within(dialog, SIZE));
    dialog.setLocationRelativeTo(over);
  }

  private static JComponent refused(List<RefusedLine> lines) {
    List<List<String>> rows = new ArrayList<>();
    lines.forEach(
        line -> rows.add(List.of(line.line() + "", line.what(), Reason.of(line.reason()))));
    RowTable table = new RowTable("preview-refused", Words.of("preview.refused"), WIDEST_REASON);
    table.breakLines();
    table.show(
        new ChartTable(
            List.of(
                ChartTable.Column.figures(Words.of("preview.line")),
                ChartTable.Column.words(Words.of("preview.what")),
                ChartTable.Column.words(Words.of("preview.reason"))),
            rows),
        -1);
    JPanel panel = new JPanel(new BorderLayout(0, 4));
    JTextArea head = StackPanel.words(Words.of("preview.refused-head", lines.size()), Font.BOLD);
    head.setName("preview-refused-head");
    panel.add(head, BorderLayout.NORTH);
    JScrollPane scroll = new JScrollPane(table);
    scroll.setPreferredSize(UIScale.scale(new Dimension(0, REFUSED_HEIGHT)));
    panel.add(scroll, BorderLayout.CENTER);
    return panel;
  }

  private JComponent buttons(boolean anything, Runnable taken) {
    Command take =
        Command.of(
            "preview.take",
            null,
            () -> {
              dialog.dispose();
              taken.run();
            });
    take.setEnabled(anything);
    Command leave = Command.of("written.leave", null, dialog::dispose);
    JButton taking = take.named(new JButton(take), "button:");
    JButton leaving = leave.named(new JButton(leave), "preview:");
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
    buttons.add(taking);
    buttons.add(leaving);
    Keys.answer(dialog, anything ? taking : leaving, leave);
    return buttons;
  }

  void open() {
    dialog.setVisible(true);
  }
}
