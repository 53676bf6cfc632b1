package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import javax.swing.text.BadLocationException;
import javax.swing.text.Document;
import javax.swing.text.JTextComponent;
import org.jfree.chart.ChartPanel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.TextSize;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.Words;

/** Every view in a real window, in what people wear, kept as pictures to be looked at. */
class GalleryWindowTest {

  private static final List<String> VIEWS =
      List.of(
          "chart",
          "table",
          "positions",
          "brief",
          "tradeoff",
          "robustness",
          "compare",
          "review",
          "materials",
          "questions",
          "measured",
          "plugins");

  /** Appearance, language and size of text together. */
  enum Dress {
    LIGHT_ENGLISH(Appearance.LIGHT, Language.ENGLISH, TextSize.NORMAL),
    DARK_ENGLISH(Appearance.DARK, Language.ENGLISH, TextSize.NORMAL),
    LIGHT_CHINESE(Appearance.LIGHT, Language.CHINESE, TextSize.NORMAL),
    DARK_CHINESE_DOUBLE(Appearance.DARK, Language.CHINESE, TextSize.DOUBLE),
    LIGHT_ENGLISH_DOUBLE(Appearance.LIGHT, Language.ENGLISH, TextSize.DOUBLE);

    private final Appearance appearance;
    private final Language language;
    private final TextSize size;

    Dress(Appearance appearance, Language language, TextSize size) {
      this.appearance = appearance;
      this.language = language;
      this.size = size;
    }
  }

  @TempDir Path folder;

  @BeforeEach
  void windowsCanOpen() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsCutInAnyView(Dress dress) {
    Path file = SmallStudy.file(folder, "mint", SmallStudy.few());
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      Screen.on(
          () -> {
            window.frame.speak(dress.language);
            window.frame.size(dress.size);
            window.frame.dress(dress.appearance);
            if (dress.size == TextSize.DOUBLE) {
              window.frame.setSize(Toolkit.getDefaultToolkit().getScreenSize());
            }
            return null;
          });
      for (String view : VIEWS) {
        window.choose("place." + view);
        Screen.await("it is in front", () -> front() == VIEWS.indexOf(view));
        Screen.await("it has something to show", () -> !waits());
        window.picture(
            "view-" + view + "-" + dress.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        assertThat(Screen.on(() -> Letters.twice(window.frame))).as(view).isEmpty();
        if (dress.size == TextSize.NORMAL) {
          assertThat(Screen.on(() -> Cuts.in(Screen.get("view", JComponent.class))))
              .as(view)
              .isEmpty();
        }
      }
    }
  }

  private static boolean waits() {
    return Screen.all(Screen.get("view", JComponent.class)).stream()
        .filter(Component::isShowing)
        .anyMatch(
            part ->
                part instanceof ChartPanel chart && chart.getChart() == null
                    || part instanceof JTextComponent text && waits(text.getDocument()));
  }

  private static boolean waits(Document document) {
    try {
      String text = document.getText(0, document.getLength());
      return Stream.of("candidate.waiting", "robustness.waiting")
          .map(Words::of)
          .anyMatch(text::contains);
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static int front() {
    return Screen.on(() -> Screen.get("views", JTabbedPane.class).getSelectedIndex());
  }
}
