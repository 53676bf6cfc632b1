package plyworth.workbench.desktop.material;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.Buttons;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.RowTable;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.LongWork;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.session.ViewCards;
import plyworth.workbench.desktop.session.WorkBar;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.robustness.turn.OpenQuestions;
import plyworth.workbench.robustness.turn.QuestionList;

/**
 * Which unknown or assumed figures could change who leads: found by hand, mailed to a laboratory,
 * and its answers read back.
 */
public final class QuestionsView implements View {

  private static final int WIDEST = 260;
  private static final int MOST = 1000;
  private static final ChartTable NOTHING = new ChartTable(List.of(), List.of());

  private final LongWork<OpenQuestions> work = new LongWork<>(this::showAgain);
  private final WorkBar bar = new WorkBar("questions", "questions.find", this::find, work::stop);
  private final JTextArea head = StackPanel.words("", Font.PLAIN);
  private final RowTable table = new RowTable("questions", Words.of("questions.name"), WIDEST);
  private final JPanel content = new JPanel(new BorderLayout());
  private final ViewCards cards = new ViewCards("questions-view", content, this);
  private final AnswersFile answers = new AnswersFile(content);
  private final Command copy = Command.of("questions.copy", null, this::copy);
  private final Command save = Command.of("questions.save", null, this::save);
  private final Command read = Command.of("questions.read", null, () -> answers.read(session()));
  private Session session;
  private Ranked ranked;

  /**
   * The view.
   *
   * @param opened takes material and property of a question that is to be looked at
   */
  public QuestionsView(BiConsumer<String, String> opened) {
    table.breakLines();
    table.whenEntered(
        () ->
            words()
                .filter(words -> table.getSelectedRow() >= 0)
                .map(words -> words.subject(table.getSelectedRow()))
                .ifPresent(subject -> opened.accept(subject.material(), subject.property())));
    head.setName("questions-head");
    JTextArea note = StackPanel.words(Words.of("questions.note"), Font.PLAIN);
    note.setName("questions-note");
    StackPanel top = new StackPanel();
    top.setBorder(BorderFactory.createEmptyBorder(6, 10, 6, 10));
    top.add(bar.component());
    top.add(head);
    StackPanel foot = new StackPanel();
    foot.setBorder(BorderFactory.createEmptyBorder(6, 10, 6, 10));
    foot.add(Buttons.row(copy, save, read));
    foot.add(note);
    content.add(top, BorderLayout.NORTH);
    content.add(new JScrollPane(table), BorderLayout.CENTER);
    content.add(foot, BorderLayout.SOUTH);
  }

  @Override
  public JComponent component() {
    return cards.component();
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return table;
  }

  private Session session() {
    return session;
  }

  private void showAgain() {
    if (session != null) {
      show(session);
    }
  }

  @Override
  public void show(Session now) {
    session = now;
    Ranked found = cards.show(now).orElse(null);
    if (found == null) {
      return;
    }
    if (found != ranked) {
      ranked = found;
      work.clear();
    }
    boolean weighted = ranked.ranking().model().weighted();
    bar.show(work, weighted);
    Optional<QuestionWords> words = words();
    copy.setEnabled(words.isPresent());
    save.setEnabled(words.isPresent());
    head.setText(
        words
            .map(QuestionWords::head)
            .orElseGet(() -> Words.of(weighted ? "questions.ask" : "questions.unweighted")));
    table.show(words.map(QuestionWords::table).orElse(NOTHING), table.getSelectedRow());
  }

  private Optional<QuestionWords> words() {
    return work.result().map(open -> new QuestionWords(ranked, open));
  }

  private void find() {
    Ranked now = ranked;
    work.start(progress -> OpenQuestions.of(now, progress));
  }

  private void copy() {
    words()
        .ifPresent(
            words ->
                Toolkit.getDefaultToolkit()
                    .getSystemClipboard()
                    .setContents(new StringSelection(words.text()), null));
  }

  private void save() {
    work.result()
        .map(open -> QuestionList.text(open, MOST))
        .ifPresent(
            text ->
                MaterialFiles.csv(content, Words.of("questions.file-name"))
                    .write(MaterialFiles::ended, file -> Files.writeString(file, text)));
  }
}
