package plyworth.workbench.desktop.brief;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Leaving;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** The form of a brief as a dialog: for a new study, or for the one on screen. */
public final class BriefDialog {

  private static final Dimension SIZE = new Dimension(1160, 760);

  private final JDialog dialog;
  private final BriefForm form;
  private final Consumer<Study> taken;
  private final Background reading = new Background();

  private BriefDialog(
      JFrame owner,
      String key,
      Study base,
      BriefDraft began,
      Session session,
      Consumer<Study> taken) {
    this.taken = taken;
    form = new BriefForm(base, began, () -> session.selection().structure());
    dialog = new JDialog(owner, Words.of(key + ".title"), true);
    dialog.setName(key);
    dialog.add(form.component(), BorderLayout.CENTER);
    dialog.add(foot(key), BorderLayout.SOUTH);
    dialog.setDefaultCloseOperation(JDialog.DO_NOTHING_ON_CLOSE);
    dialog.addWindowListener(new Opening());
    Dimension screen = owner.getToolkit().getScreenSize();
    dialog.setSize(
        Math.min(UIScale.scale(SIZE.width), screen.width - 20),
        Math.min(UIScale.scale(SIZE.height), screen.height - 40));
    dialog.setLocationRelativeTo(owner);
  }

  /** Asks for a new study. */
  public static void create(JFrame owner, Session session, Path examples, Consumer<Study> made) {
    Study first = PaperLaminate.study();
    BriefDialog asked = new BriefDialog(owner, "new", first, NewStudy.draft(first), session, made);
    asked.dialog.add(asked.beginning(NewStudy.all(session, examples)), BorderLayout.NORTH);
    asked.dialog.setVisible(true);
  }

  /** Asks for another brief of the study on screen. */
  public static void edit(JFrame owner, Session session, Consumer<Study> changed) {
    Study now = session.study().orElseThrow();
    new BriefDialog(owner, "brief-form", now, BriefDraft.of(now), session, changed)
        .dialog.setVisible(true);
  }

  private JComponent beginning(List<NewStudy> beginnings) {
    JComboBox<NewStudy> choice = new JComboBox<>(beginnings.toArray(NewStudy[]::new));
    choice.setName("new-begin");
    choice.addActionListener(event -> begin((NewStudy) choice.getSelectedItem()));
    JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 0));
    line.add(Marked.label("new.begin", choice));
    line.add(choice);
    StackPanel head = new StackPanel();
    head.setBorder(BorderFactory.createEmptyBorder(12, 12, 8, 12));
    head.add(line);
    head.add(StackPanel.words(Words.of("new.note"), Font.PLAIN));
    return head;
  }

  /** Reads off the event thread; the form shows what is read when it is there. */
  private void begin(NewStudy chosen) {
    reading.run(
        stale -> chosen.study().get(),
        study -> form.beginInstead(study, NewStudy.draft(study)),
        reason ->
            JOptionPane.showMessageDialog(
                dialog,
                Reason.of(reason),
                Words.of("dialog.failed.title"),
                JOptionPane.ERROR_MESSAGE));
  }

  private JComponent foot(String key) {
    Command done = Command.of(key + ".done", null, this::take);
    Command leave = Command.of("brief-form.leave", null, this::leave);
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
    JButton take = done.named(new JButton(done), "button:");
    buttons.add(take);
    buttons.add(leave.named(new JButton(leave), "button:"));
    Keys.answer(dialog, take, leave);
    JPanel foot = new JPanel(new BorderLayout());
    foot.setBorder(BorderFactory.createEmptyBorder(0, 12, 4, 6));
    foot.add(StackPanel.words(Words.of("caution"), Font.PLAIN), BorderLayout.CENTER);
    foot.add(buttons, BorderLayout.EAST);
    return foot;
  }

  /** Takes over what was typed; while something is wrong, goes there instead. */
  private void take() {
    form.reading()
        .study()
        .ifPresentOrElse(
            study -> {
              close();
              taken.accept(study);
            },
            form::goToFault);
  }

  /** Closes; asks first when something was typed. */
  private void leave() {
    if (!form.typed() || Leaving.givenUp(dialog)) {
      close();
    }
  }

  private void close() {
    reading.cancel();
    dialog.dispose();
  }

  private final class Opening extends WindowAdapter {
    @Override
    public void windowOpened(WindowEvent event) {
      form.goTo(BriefField.TITLE);
    }

    @Override
    public void windowClosing(WindowEvent event) {
      leave();
    }
  }
}
