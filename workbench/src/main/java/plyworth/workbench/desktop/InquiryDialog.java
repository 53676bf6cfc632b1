package plyworth.workbench.desktop;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import plyworth.shared.route.StructureText;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Inquiry;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** Asks for a structure and says why it is not offered or not ranked, beside the window. */
final class InquiryDialog {

  private static final int NEAREST = 3;
  private static final int LINES = 3;
  private static final Dimension SIZE = new Dimension(760, 560);

  private final Session session;
  private final Background work = new Background();
  private final JTextArea notation = new JTextArea(LINES, 0);
  private final Page answer = new Page("inquiry-answer", Words.of("inquiry.answer.name"));
  private final Command show = Command.of("inquiry.show", null, this::showBeside);
  private final JDialog dialog;
  private Structure asked;

  InquiryDialog(JFrame owner, Session session) {
    this.session = session;
    dialog = new JDialog(owner, Words.of("inquiry.title"), false);
    dialog.setName("inquiry");
    notation.setName("inquiry-structure");
    JPanel top = new JPanel(new BorderLayout(0, 4));
    top.setBorder(BorderFactory.createEmptyBorder(12, 12, 8, 12));
    top.add(Marked.label("inquiry.structure", notation), BorderLayout.NORTH);
    top.add(new JScrollPane(notation), BorderLayout.CENTER);
    Command asking = Command.of("inquiry.ask", null, this::ask);
    JButton ask = button(asking);
    writeLikeAField(asking);
    Command close = Command.of("inquiry.close", null, dialog::dispose);
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
    buttons.add(ask);
    buttons.add(button(show));
    buttons.add(button(close));
    dialog.add(top, BorderLayout.NORTH);
    dialog.add(new JScrollPane(answer), BorderLayout.CENTER);
    dialog.add(buttons, BorderLayout.SOUTH);
    Keys.answer(dialog, ask, close);
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    dialog.setSize(UIScale.scale(SIZE));
    dialog.setLocationRelativeTo(owner);
  }

  /** A structure is one line, broken where the field ends; Enter asks and Tab leaves. */
  private void writeLikeAField(Command asking) {
    notation.setLineWrap(true);
    notation.setWrapStyleWord(true);
    Keys.leaveByTab(notation);
    notation.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), asking);
    notation.getActionMap().put(asking, asking);
  }

  private static JButton button(Command command) {
    return command.named(new JButton(command), "button:");
  }

  /** Opens, with the selected structure to begin with. */
  void open() {
    session.selection().structure().ifPresent(s -> notation.setText(s.toString()));
    notation.selectAll();
    show.setEnabled(false);
    if (!dialog.isDisplayable()) {
      SwingUtilities.updateComponentTreeUI(dialog);
    }
    answer.show(page(Words.of("inquiry.hint")));
    dialog.setVisible(true);
  }

  /** Closes for good. */
  void dispose() {
    work.cancel();
    dialog.dispose();
  }

  private void ask() {
    Ranked ranked = session.ranked().orElse(null);
    if (ranked == null) {
      refuse(Words.of("inquiry.no-ranking"));
      return;
    }
    try {
      asked =
          new StructureText(ranked.study().materialsAtHand(), ranked.study().processesAtHand())
              .read(notation.getText());
    } catch (IllegalArgumentException e) {
      refuse(Reason.of(e.getMessage()));
      return;
    }
    Structure structure = asked;
    show.setEnabled(true);
    answer.show(page(Words.of("candidate.waiting")));
    work.run(
        stale -> InquiryPage.of(ranked, Inquiry.of(ranked, structure, NEAREST)),
        answer::show,
        reason -> answer.show(page(Reason.of(reason))));
  }

  private void refuse(String reason) {
    work.cancel();
    show.setEnabled(false);
    answer.show(page(Reason.of(reason)));
  }

  private void showBeside() {
    session.select(asked);
  }

  private static String page(String text) {
    return "<html><p>" + Html.escaped(text) + "</p></html>";
  }
}
