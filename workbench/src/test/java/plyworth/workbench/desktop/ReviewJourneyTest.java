package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.session.Remembered;
import plyworth.workbench.desktop.word.Language;

/** Management reviews a shared study, in Chinese and by the keyboard alone. */
class ReviewJourneyTest {

  @TempDir Path folder;
  private OpenWindow window;
  private Keyboard keys;

  @BeforeEach
  void needsADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  @Test
  void aSharedStudyIsReviewedRemarkedOnAndExported() throws IOException {
    Path study = SmallStudy.example(folder, "freeze-dried-snack");
    Remembered chinese = OpenWindow.newcomer(study);
    chinese.language(Language.CHINESE);
    try (OpenWindow shared = OpenWindow.opened(study, SmallStudy.CATALOG, chinese)) {
      shared.awaitRest();
      window = shared;
      keys = new Keyboard(shared);
      onePageSaysWhatIsAtStake();
      twoCriteriaAreTradedOff();
      anotherStakeholderWeighs();
      theRankingIsDoubted();
      aRemarkIsLeft();
      thePageIsExported();
    }
  }

  private void onePageSaysWhatIsAtStake() {
    goToReview();
    Screen.await("it recommends", () -> page().contains("建议"));
    assertThat(page()).contains("次选", "现用", "所得", "所失", "把握程度", "未校准");
    window.picture("review-1-page-chinese");
  }

  private void goToReview() {
    window.shortcut(KeyEvent.VK_2, KeyEvent.VK_SHIFT);
    keys.awaits("review");
  }

  private String page() {
    return window.words("review");
  }

  private void twoCriteriaAreTradedOff() {
    window.goTo(9);
    keys.awaits("tradeoff");
    String leader = window.head();
    keys.key(KeyEvent.VK_RIGHT);
    Screen.await("another is described", () -> !window.head().equals(leader));
    window.hand.mnemonic(KeyEvent.VK_O);
    keys.awaits("tradeoff.across");
    String before = words("tradeoff-note");
    keys.key(KeyEvent.VK_DOWN);
    keys.key(KeyEvent.VK_DOWN);
    Screen.await("the plot follows", () -> !words("tradeoff-note").isEmpty());
    assertThat(before).contains("前沿");
    window.awaitRest();
    window.picture("review-2-tradeoff-chinese");
  }

  private void anotherStakeholderWeighs() {
    window.goTo(8);
    keys.awaits("weighting");
    keys.key(KeyEvent.VK_DOWN);
    Screen.await("it is an edit", () -> window.title().startsWith("•"));
    window.awaitRest();
    window.picture("review-3-stakeholder-chinese");
    window.shortcut(KeyEvent.VK_Z);
    Screen.await("it is taken back", () -> !window.title().startsWith("•"));
    window.awaitRest();
  }

  private void theRankingIsDoubted() {
    window.shortcut(KeyEvent.VK_0, KeyEvent.VK_SHIFT);
    keys.awaits("stability");
    Screen.await("the leader is named", () -> !words("robustness-leader").isBlank());
    keys.press("button:chances.draw");
    Screen.await("it is drawn", () -> words("chances-note").contains("抽样"));
    keys.press("button:turn.find");
    Screen.await("it is found", () -> Screen.find("turn", JComponent.class).isPresent());
    window.picture("review-4-robustness-chinese");
  }

  private void aRemarkIsLeft() {
    window.shortcut(KeyEvent.VK_M);
    keys.awaits("remark-text");
    keys.write("ask for a trial reel first");
    keys.key(KeyEvent.VK_ESCAPE);
    window.answer(UIManager.getString("OptionPane.noButtonText", Locale.SIMPLIFIED_CHINESE));
    keys.regain();
    keys.awaits("remark-text");
    keys.key(KeyEvent.VK_A, KeyEvent.VK_ALT);
    Keyboard.awaitGone("remark");
    goToReview();
    Screen.await("it stands", () -> page().contains("trial reel"));
  }

  private void thePageIsExported() throws IOException {
    keys.key(KeyEvent.VK_P, KeyEvent.VK_ALT);
    Path exported = folder.resolve("for the board.html");
    keys.nameFile("review-file", exported);
    Screen.await("it is written", () -> Files.exists(exported));
    assertThat(Files.readString(exported)).contains("trial reel", "未校准");
    window.picture("review-5-exported-chinese");
  }

  private static String words(String name) {
    return Screen.on(() -> Screen.find(name, JTextArea.class).map(JTextArea::getText).orElse(""));
  }
}
