package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.brief.BriefSection;
import plyworth.workbench.desktop.brief.PaperLaminate;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.session.Remembered;
import plyworth.workbench.desktop.word.Language;

/** Making a study in a real window, and editing its brief. */
class BriefWindowTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  /** Puts the keyboard on a field, once the dialog has it. */
  private static JComponent goTo(String field) {
    JComponent target = Screen.get("field:" + field, JComponent.class);
    Screen.on(
        () -> {
          target.requestFocus();
          return null;
        });
    Screen.await(field + " has the keyboard", target::isFocusOwner);
    return target;
  }

  private static void awaitKeyboard(String field) {
    JComponent target = Screen.get("field:" + field, JComponent.class);
    Screen.await(field + " has the keyboard", target::isFocusOwner);
  }

  /** Strikes the keys of a word of letters, figures, points and blanks. */
  private static void type(OpenWindow window, String text) {
    for (char c : text.toUpperCase(Locale.ROOT).toCharArray()) {
      window.hand.key(c == '.' ? KeyEvent.VK_PERIOD : c);
    }
  }

  private static String note(String field) {
    return Screen.on(() -> Screen.get("note:" + field, JTextArea.class).getText());
  }

  private static String verdict() {
    return Screen.on(() -> Screen.get("brief-verdict", JTextArea.class).getText());
  }

  private static void awaitGone(String dialog) {
    Screen.await(dialog + " is closed", () -> Screen.find(dialog, JDialog.class).isEmpty());
  }

  private static void choose(String box, String title) {
    JComboBox<?> choice = Screen.get(box, JComboBox.class);
    Screen.on(
        () -> {
          for (int i = 0; i < choice.getItemCount(); i++) {
            if (choice.getItemAt(i).toString().equals(title)) {
              choice.setSelectedIndex(i);
            }
          }
          return null;
        });
    assertThat(Screen.on(() -> choice.getSelectedItem().toString())).isEqualTo(title);
  }

  @Test
  void aStudyIsMadeByKeyboardRankedSavedAndOpenedAgain() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_N);
      awaitKeyboard("title");
      assertThat(verdict()).contains("One entry is missing or wrong", "Title");
      type(window, "tea on the ferry");
      assertThat(verdict()).isEqualTo("Everything is filled in.");
      window.hand.key(KeyEvent.VK_TAB);
      awaitKeyboard("why");
      type(window, "the foil must go");
      window.hand.key(KeyEvent.VK_K, KeyEvent.VK_ALT);
      goTo("pack-width");
      type(window, "1.25 in");
      window.hand.key(KeyEvent.VK_ENTER);
      awaitGone("new");
      window.awaitRest();
      Screen.await("it is shown", () -> window.title().contains("tea on the ferry"));
      assertThat(window.title()).startsWith("•").contains("tea-on-the-ferry.study.json");
      assertThat(window.status()).contains("candidates:");
      window.picture("brief-new-ranked");

      window.shortcut(KeyEvent.VK_S);
      window.choose(folder.resolve("ferry"));
      Screen.await("it is saved", () -> window.title().contains("ferry.study.json"));
      Screen.await("nothing is left to save", () -> !window.title().startsWith("•"));
      Study saved = StudyFile.open(folder.resolve("ferry.study.json")).study();
      assertThat(saved.title()).isEqualTo("tea on the ferry");
      assertThat(saved.question()).isEqualTo("the foil must go");
      assertThat(saved.brief().pack().widthMm()).isEqualTo(31.75);
    }
    try (OpenWindow again =
        OpenWindow.ranked(folder.resolve("ferry.study.json"), SmallStudy.CATALOG)) {
      assertThat(again.head()).contains("rank 1");
    }
  }

  @Test
  void aBriefIsEditedAsOneStepThatUndoTakesBackAndTheRankingFollows() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      String before = window.head();
      window.shortcut(KeyEvent.VK_B);
      awaitKeyboard("title");
      window.hand.key(KeyEvent.VK_S, KeyEvent.VK_ALT);
      goTo("shelf-life");
      type(window, "3 years");
      choose("field:climate", "zone of stability testing");
      choose("field:zone", "zone IVb, 30 °C 75 % RH");
      window.picture("brief-storage");
      Screen.press("button:brief-form.done");
      awaitGone("brief-form");
      Screen.await("the change is marked", () -> window.title().startsWith("•"));
      Screen.await(
          "it is ranked again", () -> !window.head().equals(before) && !window.head().isBlank());
      window.awaitRest();
      assertThat(Screen.on(() -> undoName(window))).isEqualTo("Undo change of brief");
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is as it was", () -> window.head().equals(before));
      assertThat(window.title()).doesNotStartWith("•");
    }
  }

  private static String undoName(OpenWindow window) {
    return Screen.all(window.frame.getJMenuBar()).stream()
        .filter(javax.swing.JMenu.class::isInstance)
        .flatMap(m -> Screen.all(((javax.swing.JMenu) m).getPopupMenu()).stream())
        .filter(item -> "menu:action.undo".equals(item.getName()))
        .map(item -> ((javax.swing.JMenuItem) item).getText())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aWrongEntryIsAnsweredBesideItsFieldAndTakingOverGoesThere() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_B);
      awaitKeyboard("title");
      JTabbedPane pages = Screen.get("brief-pages", JTabbedPane.class);
      Screen.on(
          () -> {
            pages.setSelectedIndex(BriefSection.PACK.ordinal());
            return null;
          });
      goTo("pack-width");
      type(window, "25 furlong");
      Screen.await("it is said", () -> note("pack-width").contains("mm, cm, in"));
      assertThat(verdict()).contains("Pack", "Flat width", "\"furlong\" is no unit here");
      assertThat(Screen.on(() -> pages.getTitleAt(BriefSection.PACK.ordinal())))
          .isEqualTo("Pack  ✗ 1");
      window.picture("brief-wrong");
      Screen.on(
          () -> {
            pages.setSelectedIndex(BriefSection.MARKET.ordinal());
            return null;
          });
      Screen.press("button:brief-form.done");
      awaitKeyboard("pack-width");
      assertThat(Screen.find("brief-form", JDialog.class)).isPresent();
      type(window, "25 mm");
      assertThat(verdict()).isEqualTo("Everything is filled in.");
    }
  }

  @Test
  void escapeAsksOnlyWhenSomethingWasTyped() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_B);
      awaitKeyboard("title");
      window.hand.key(KeyEvent.VK_ESCAPE);
      awaitGone("brief-form");
      window.shortcut(KeyEvent.VK_B);
      awaitKeyboard("title");
      type(window, "other");
      window.hand.key(KeyEvent.VK_ESCAPE);
      window.answer("No");
      assertThat(Screen.on(() -> Screen.get("field:title", JTextField.class).getText()))
          .isEqualTo("other");
      goTo("title");
      window.hand.key(KeyEvent.VK_ESCAPE);
      window.answer("Yes");
      awaitGone("brief-form");
      assertThat(window.title()).doesNotStartWith("•").contains("Mint leaf stick");
    }
  }

  @Test
  void aNewStudyBeginsWithAnExampleAndKeepsWhatWasTyped() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_N);
      awaitKeyboard("title");
      type(window, "wipes");
      choose("new-begin", "isopropanol-wipe");
      JTextComponent baseline = Screen.get("field:baseline", JTextComponent.class);
      Screen.await("it is taken over", () -> baseline.getText().contains("flexo-solvent"));
      assertThat(Screen.on(() -> Screen.get("field:title", JTextField.class).getText()))
          .isEqualTo("wipes");
      Screen.press("button:new.done");
      awaitGone("new");
      window.awaitRest();
      Screen.await("it is shown", () -> window.title().contains("wipes"));
      window.goTo(4);
      Screen.await(
          "the brief is that of the example",
          () -> window.text("brief", Page.class, Page::getText).contains("isopropanol"));
      window.picture("brief-view");
    }
  }

  @Test
  void whatIsNotSavedOfANewStudyIsFoundAgainAmongTheRecentFiles() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      Path never = folder.resolve("lost.study.json");
      Remembered remembered = window.frame.remembered();
      remembered.unsaved().keep(never, PaperLaminate.study(), () -> false);
      assertThat(remembered.unsaved().holds(never)).isTrue();
      Screen.on(
          () -> {
            window.frame.open(never);
            return null;
          });
      Screen.await("it is open", () -> window.title().contains("lost.study.json"));
      assertThat(window.title()).startsWith("•");
      window.awaitRest();
    }
  }

  /** A user whose program ended before a new study was saved. */
  private Remembered interrupted(Path never) {
    Remembered remembered = OpenWindow.newcomer(file);
    remembered.opened(never);
    remembered.unsaved().keep(never, PaperLaminate.study(), () -> false);
    return remembered;
  }

  @Test
  void aStudyThatWasNeverSavedIsOfferedAtTheNextStart() {
    Path never = folder.resolve("lost.study.json");
    try (OpenWindow window = OpenWindow.opened(file, SmallStudy.CATALOG, interrupted(never))) {
      assertThat(window.refusal()).contains("lost.study.json was never saved");
      window.picture("never-saved");
      window.hand.key(KeyEvent.VK_ENTER);
      Screen.await("it is open", () -> window.title().contains("lost.study.json"));
      assertThat(window.title()).startsWith("•");
      window.awaitRest();
    }
  }

  @Test
  void aStudyThatWasNeverSavedIsKeptUntilItIsGivenUp() {
    Path never = folder.resolve("lost.study.json");
    Remembered remembered = interrupted(never);
    try (OpenWindow window = OpenWindow.opened(file, SmallStudy.CATALOG, remembered)) {
      window.refusal();
      window.hand.key(KeyEvent.VK_ESCAPE);
      Screen.await(
          "the question is gone", () -> Screen.find("dialog-text", JTextComponent.class).isEmpty());
      window.awaitRest();
      assertThat(remembered.neverSaved()).contains(never);
    }
    try (OpenWindow window = OpenWindow.opened(file, SmallStudy.CATALOG, remembered)) {
      window.refusal();
      window.hand.key(KeyEvent.VK_N, KeyEvent.VK_ALT);
      Screen.await("it is given up", () -> remembered.neverSaved().isEmpty());
      window.awaitRest();
      assertThat(window.title()).contains("mint");
    }
  }

  @Test
  void aStudyIsMadeByMouse() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      click(window, "button:action.new");
      awaitKeyboard("title");
      click(window, "field:title");
      type(window, "by mouse");
      JTabbedPane pages = Screen.get("brief-pages", JTabbedPane.class);
      Rectangle pack = Screen.on(() -> pages.getBoundsAt(BriefSection.PACK.ordinal()));
      window.hand.click(pages, (int) pack.getCenterX(), (int) pack.getCenterY());
      click(window, "field:pack-length");
      awaitKeyboard("pack-length");
      type(window, "105");
      click(window, "button:new.done");
      awaitGone("new");
      window.awaitRest();
      window.goTo(4);
      Screen.await(
          "the brief says the length",
          () -> window.text("brief", Page.class, Page::getText).contains("105 mm"));
    }
  }

  private static void click(OpenWindow window, String name) {
    window.hand.click(Screen.get(name, JComponent.class));
  }

  @Test
  void aWindowWithoutAStudyMakesOne() throws IOException {
    Path empty = Files.writeString(folder.resolve("empty.study.json"), "{}");
    try (OpenWindow window = OpenWindow.opened(empty, SmallStudy.CATALOG)) {
      window.refusal();
      window.understand();
      window.shortcut(KeyEvent.VK_N);
      awaitKeyboard("title");
      type(window, "first");
      window.hand.key(KeyEvent.VK_ENTER);
      awaitGone("new");
      window.awaitRest();
      assertThat(window.title()).startsWith("•").contains("first.study.json");
    }
  }

  @Test
  void leavingAStudyThatWasNeverSavedAsksWhereToSaveIt() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_N);
      awaitKeyboard("title");
      type(window, "kept");
      window.hand.key(KeyEvent.VK_ENTER);
      awaitGone("new");
      window.awaitRest();
      window.shortcut(KeyEvent.VK_Q);
      window.answer("Yes");
      window.choose(folder.resolve("kept"));
      Screen.await("the window is closed", () -> !window.frame.isShowing());
      assertThat(StudyFile.open(folder.resolve("kept.study.json")).study().title())
          .isEqualTo("kept");
    }
  }

  @Test
  void allPagesAreShownInEveryDress() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      for (Language language : Language.values()) {
        for (Appearance appearance : new Appearance[] {Appearance.LIGHT, Appearance.DARK}) {
          Screen.on(
              () -> {
                window.frame.dress(appearance);
                window.frame.speak(language);
                return null;
              });
          SwingUtilities.invokeLater(window.frame::newStudy);
          awaitKeyboard("title");
          photograph(window, language + "-" + appearance);
          Screen.press("button:brief-form.leave");
          awaitGone("new");
        }
      }
    }
  }

  private static void photograph(OpenWindow window, String dress) {
    JTabbedPane pages = Screen.get("brief-pages", JTabbedPane.class);
    Window dialog = SwingUtilities.getWindowAncestor(pages);
    for (BriefSection section : BriefSection.values()) {
      Screen.on(
          () -> {
            pages.setSelectedIndex(section.ordinal());
            return null;
          });
      Screen.keep(
          ("brief-" + section + "-" + dress).toLowerCase(Locale.ROOT),
          window.hand.picture(Screen.on(dialog::getBounds)));
      assertThat(Screen.on(pages::getSelectedIndex)).isEqualTo(section.ordinal());
    }
  }
}
