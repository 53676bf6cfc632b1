package plyworth.workbench.desktop.decision;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import javax.swing.text.BadLocationException;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.NewFile;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.part.WrappingRow;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.session.ViewCards;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.robustness.Acceptability;

/** What management needs to decide, on one page that can be copied and saved. */
public final class ReviewView implements View {

  /** A runner-up of another kind is the second of these, or the first where one was decided. */
  private static final int KINDS = 2;

  private final JPanel content = new JPanel(new BorderLayout());
  private final ViewCards cards = new ViewCards("review-view", content, this);
  private final Page page = new Page("review", Words.of("review.name"));
  private final Background work = new Background();
  private final Supplier<Optional<Acceptability>> drawn;
  private Ranked asked;
  private Review shown;
  private Optional<Acceptability> told = Optional.empty();

  /**
   * The view.
   *
   * @param drawn how often candidates come first in the ranking on screen, once somebody drew
   */
  public ReviewView(Supplier<Optional<Acceptability>> drawn) {
    this.drawn = drawn;
    JPanel tools = new WrappingRow(FlowLayout.TRAILING, 8, 6);
    Command copy = Command.of("review.copy", null, this::copy);
    Command save = Command.of("review.save", null, this::save);
    tools.add(copy.named(new JButton(copy), "button:"));
    tools.add(save.named(new JButton(save), "button:"));
    content.add(tools, BorderLayout.NORTH);
    content.add(new JScrollPane(page), BorderLayout.CENTER);
  }

  @Override
  public JComponent component() {
    return cards.component();
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return page;
  }

  @Override
  public void show(Session now) {
    Ranked ranked = cards.show(now).orElse(null);
    if (ranked == null) {
      return;
    }
    if (ranked != asked) {
      asked = ranked;
      if (shown == null) {
        page.show(
            "<html><body><p>" + Html.escaped(Words.of("candidate.waiting")) + "</p></body></html>");
      }
      TodayReview today = now.today();
      work.run(
          stale -> Review.of(ranked, BestList.kinds(ranked, KINDS), today),
          this::take,
          this::refuse);
    } else if (shown != null && !told.equals(drawn.get())) {
      redraw();
    }
  }

  private void take(Review review) {
    shown = review;
    redraw();
  }

  private void refuse(String reason) {
    page.show("<html><p>" + Html.escaped(reason) + "</p></html>");
  }

  /** Writes the page again, in the colours of the look and feel. */
  public void redraw() {
    if (shown != null) {
      told = drawn.get();
      page.show("<html><body>" + ReviewPage.of(shown, told) + "</body></html>");
    }
  }

  private void copy() {
    try {
      String text = page.getDocument().getText(0, page.getDocument().getLength());
      Toolkit.getDefaultToolkit()
          .getSystemClipboard()
          .setContents(new StringSelection(text.strip()), null);
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
  }

  private void save() {
    if (shown != null) {
      String text = document();
      new NewFile(
              content,
              "review-file",
              new FileNameExtensionFilter(Words.of("review.files"), "html"),
              Words.of("review.file-name") + ".html")
          .write(ReviewView::completed, file -> Files.writeString(file, text));
    }
  }

  private static Path completed(Path file) {
    String name = file.getFileName().toString();
    return name.contains(".") ? file : file.resolveSibling(name + ".html");
  }

  private String document() {
    return "<!DOCTYPE html>\n<html><head><meta charset='utf-8'><title>"
        + Html.escaped(shown.ranked().study().title())
        + "</title><style>body{font-family:sans-serif;max-width:48em;margin:2em auto}"
        + "</style></head><body>"
        + ReviewPage.of(shown, drawn.get())
        + "</body></html>\n";
  }
}
