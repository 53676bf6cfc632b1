package plyworth.workbench.desktop.evidence;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.DialogSize;
import plyworth.workbench.desktop.part.EntryForm;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Leaving;
import plyworth.workbench.desktop.word.Words;

/** Asks for a reading; what is wrong is said beside the field, and nothing typed is lost. */
final class ReadingDialog {

  private static final Dimension SIZE = new Dimension(640, 620);

  private final JDialog dialog;
  private final ReadingSubject subject;
  private final ReadingFields fields;
  private List<String> began = List.of();

  private ReadingDialog(Window owner, String title, ReadingSubject subject) {
    this.subject = subject;
    dialog = new JDialog(owner, Words.of(title), JDialog.DEFAULT_MODALITY_TYPE);
    dialog.setName("reading");
    EntryForm form = new EntryForm();
    subject.addTo(form, this::asked);
    fields = new ReadingFields(form);
    asked();
    JScrollPane scroll = new JScrollPane(form.component());
    scroll.setBorder(null);
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    dialog.add(scroll, BorderLayout.CENTER);
    dialog.add(buttons(), BorderLayout.SOUTH);
    dialog.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent event) {
            subject.first().requestFocusInWindow();
          }
        });
    dialog.setSize(DialogSize.within(dialog, SIZE));
    dialog.setLocationRelativeTo(owner);
  }

  /**
   * Asks.
   *
   * @param title key of the title
   * @param before a reading to begin with; empty for a new one
   */
  static void ask(
      Window owner, String title, ReadingSubject subject, Optional<Measurement> before) {
    ReadingDialog asked = new ReadingDialog(owner, title, subject);
    before.ifPresent(asked.fields::show);
    asked.began = asked.fields.texts();
    asked.dialog.setVisible(true);
  }

  private void asked() {
    if (fields != null) {
      fields.measuredIn(subject.unit());
    }
  }

  private JPanel buttons() {
    Command done = Command.of("reading.done", null, this::take);
    Command leave = new Leaving(dialog, () -> !fields.texts().equals(began)).command();
    JButton taking = done.named(new JButton(done), "button:");
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
    buttons.add(taking);
    buttons.add(leave.named(new JButton(leave), "button:"));
    Keys.answer(dialog, taking, leave);
    return buttons;
  }

  private void take() {
    fields
        .read(subject.figure())
        .ifPresent(
            reading -> subject.take(reading).ifPresentOrElse(fields::refuse, dialog::dispose));
  }
}
