package plyworth.workbench.desktop.brief;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Font;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.data.Choice;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.Words;

/** All pages of a brief; what is typed is read at once, and answered beside the field. */
final class BriefForm {

  private final JTabbedPane pages = new JTabbedPane(SwingConstants.LEFT);
  private final Map<BriefField, BriefRow> rows = new EnumMap<>(BriefField.class);
  private final PackDrawing drawing = new PackDrawing();
  private final JTextArea verdict = StackPanel.words("", Font.BOLD);
  private final JPanel panel = new JPanel(new BorderLayout());
  private Study base;
  private BriefDraft began;
  private BriefReading reading;
  private boolean showing;

  /**
   * A form.
   *
   * @param base the study that it begins with
   * @param began what stands in it first
   * @param selected the structure that can be taken over as today's
   */
  BriefForm(Study base, BriefDraft began, Supplier<Optional<Structure>> selected) {
    pages.setName("brief-pages");
    pages.getAccessibleContext().setAccessibleName(Words.of("brief-form.pages"));
    verdict.setName("brief-verdict");
    for (BriefSection section : BriefSection.values()) {
      addPage(section, selected);
    }
    JPanel foot = new JPanel(new BorderLayout());
    foot.setBorder(BorderFactory.createEmptyBorder(8, 12, 4, 12));
    foot.add(verdict, BorderLayout.CENTER);
    panel.add(pages, BorderLayout.CENTER);
    panel.add(foot, BorderLayout.SOUTH);
    begin(base, began);
  }

  private void addPage(BriefSection section, Supplier<Optional<Structure>> selected) {
    BriefPage page = new BriefPage();
    page.setBorder(BorderFactory.createEmptyBorder(0, 12, 12, 8));
    for (BriefField field : BriefField.values()) {
      if (field.ask().section() == section) {
        BriefRow row = new BriefRow(field, () -> changed(field));
        rows.put(field, row);
        page.add(row);
      }
    }
    if (section == BriefSection.PACK) {
      page.add(drawing);
    } else if (section == BriefSection.QUESTION && selected.get().isPresent()) {
      page.add(takingOver(selected));
    }
    JScrollPane scroll =
        new JScrollPane(
            page, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    Marked marked = Marked.of("form.section." + Choice.plain(section));
    pages.addTab(marked.text(), scroll);
    pages.setMnemonicAt(pages.getTabCount() - 1, marked.key());
    pages.setDisplayedMnemonicIndexAt(pages.getTabCount() - 1, marked.at());
  }

  private JComponent takingOver(Supplier<Optional<Structure>> selected) {
    Command take =
        Command.of(
            "form.selected",
            null,
            () -> selected.get().ifPresent(s -> say(BriefField.BASELINE, s.toString())));
    JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
    line.add(take.named(new JButton(take), "button:"));
    return line;
  }

  JComponent component() {
    return panel;
  }

  /** Begins anew; what stands in the form is what nobody has typed. */
  void begin(Study other, BriefDraft draft) {
    base = other;
    began = draft;
    show(draft);
  }

  /** Begins with another study, and keeps what was typed so far. */
  void beginInstead(Study other, BriefDraft draft) {
    BriefDraft kept = draft.keeping(draft(), began);
    base = other;
    began = draft;
    show(kept);
  }

  private void show(BriefDraft draft) {
    showing = true;
    rows.forEach((field, row) -> row.input().show(draft.text(field)));
    showing = false;
    judge();
  }

  private void say(BriefField field, String text) {
    rows.get(field).input().show(text);
  }

  /** What stands in the form. */
  BriefDraft draft() {
    BriefDraft.Writing writing = new BriefDraft.Writing();
    rows.forEach((field, row) -> writing.put(field, row.input().text()));
    return writing.draft();
  }

  /** Whether something was typed. */
  boolean typed() {
    return !draft().says(began);
  }

  /** What it says. */
  BriefReading reading() {
    return reading;
  }

  private void changed(BriefField field) {
    if (showing) {
      return;
    }
    boolean library = "library".equals(rows.get(BriefField.SORPTION).input().text());
    if (field == BriefField.KNOWN_PRODUCT || field == BriefField.SORPTION && library) {
      takeCriticalActivity();
    }
    judge();
  }

  /** A product of the library brings its critical water activity along. */
  private void takeCriticalActivity() {
    double celsius =
        reading.study().map(Study::brief).orElse(base.brief()).climate().temperatureC();
    ProductLibrary.standard()
        .find(draft().text(BriefField.KNOWN_PRODUCT))
        .map(product -> product.criticalActivity(celsius))
        .filter(Double::isFinite)
        .ifPresent(
            activity -> say(BriefField.CRITICAL_ACTIVITY, MoistureEntries.rounded(activity)));
  }

  private void judge() {
    BriefDraft draft = draft();
    reading = BriefReading.of(draft, base);
    rows.forEach(
        (field, row) -> {
          row.setVisible(draft.asks(field));
          String fault = reading.faults().getOrDefault(field, "");
          boolean silent = !fault.isEmpty() || !draft.asks(field);
          row.judge(fault, silent ? "" : EntryRemark.of(field, draft, reading));
        });
    drawing.show(reading.pack());
    for (BriefSection section : BriefSection.values()) {
      mark(section);
    }
    sum();
    panel.revalidate();
    panel.repaint();
  }

  /** The number of faults stands behind the name of each page. */
  private void mark(BriefSection section) {
    long faults =
        reading.faults().keySet().stream().filter(f -> f.ask().section() == section).count();
    Marked marked = Marked.of("form.section." + Choice.plain(section));
    int at = section.ordinal();
    pages.setTitleAt(at, faults == 0 ? marked.text() : marked.text() + "  ✗ " + faults);
    pages.setDisplayedMnemonicIndexAt(at, marked.at());
  }

  private void sum() {
    if (reading.faults().isEmpty()) {
      verdict.setText(Words.of("brief-form.right"));
      return;
    }
    Map.Entry<BriefField, String> first = reading.faults().entrySet().iterator().next();
    String page = "form.section." + Choice.plain(first.getKey().ask().section());
    verdict.setText(
        Words.of(
            "brief-form.wrong",
            reading.faults().size(),
            Marked.of(page).bare(),
            first.getKey().title(),
            first.getValue()));
  }

  /** Goes to the first field that is wrong. */
  void goToFault() {
    reading.faults().keySet().stream().findFirst().ifPresent(this::goTo);
  }

  /** Puts the keyboard on a field, once its page is shown. */
  void goTo(BriefField field) {
    pages.setSelectedIndex(field.ask().section().ordinal());
    JComponent target = rows.get(field).input().target();
    SwingUtilities.invokeLater(target::requestFocusInWindow);
  }
}
