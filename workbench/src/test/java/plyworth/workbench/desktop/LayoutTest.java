package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.brief.BriefView;
import plyworth.workbench.desktop.candidate.CandidateView;
import plyworth.workbench.desktop.material.MaterialsView;
import plyworth.workbench.desktop.material.QuestionsView;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.TextSize;
import plyworth.workbench.desktop.position.PositionsView;
import plyworth.workbench.desktop.ranking.RankingTableView;
import plyworth.workbench.desktop.ranking.WeightingView;
import plyworth.workbench.desktop.session.Recovery;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Language;

/** Panels painted without a window: nothing is cut, in any language and appearance. */
class LayoutTest {

  private static final String TRADE =
      "复合膜镀铝膜铝箔淋膜挤出复合干式复合无溶剂复合热封层透氧率水蒸气透过率柔版凹版印刷剥离强度克重形成充填封口µ·²³−≤≥°×";

  @TempDir static Path folder;
  private static Session session;

  @BeforeAll
  static void rank() {
    Path file = SmallStudy.file(folder, "mint", SmallStudy.few());
    session =
        Screen.on(() -> new Session(SmallStudy.CATALOG, new Recovery(folder.resolve("unsaved"))));
    Screen.on(
        () -> {
          session.open(file, reason -> {}, kept -> {});
          return null;
        });
    Screen.await(
        "everything is known",
        () -> session.selection().detail().filter(d -> !d.ranges().isEmpty()).isPresent());
  }

  @AfterAll
  static void undress() {
    Screen.on(
        () -> {
          Language.ENGLISH.speak();
          Appearance.LIGHT.apply();
          return null;
        });
  }

  static Stream<Arguments> dresses() {
    return Stream.of(Language.values())
        .flatMap(l -> Stream.of(Appearance.values()).map(a -> Arguments.of(l, a)));
  }

  static Stream<Arguments> sizes() {
    return Stream.of(Language.values())
        .flatMap(
            l ->
                Stream.concat(
                    Stream.of(Appearance.values()).map(a -> Arguments.of(l, a, TextSize.NORMAL)),
                    Stream.of(TextSize.LARGER, TextSize.DOUBLE)
                        .map(s -> Arguments.of(l, Appearance.LIGHT, s))));
  }

  private static void dress(Language language, Appearance appearance) {
    language.speak();
    appearance.apply();
  }

  @AfterEach
  void normalAgain() {
    TextSize.NORMAL.take();
  }

  private static boolean canSay(Language language) {
    Font font = UIManager.getFont("Label.font");
    return language == Language.ENGLISH || font.canDisplayUpTo(TRADE) < 0;
  }

  /** The panels at the sizes that a window of 1280 × 800 pixels gives them. */
  private static Map<View, Dimension> views() {
    Map<View, Dimension> views = new LinkedHashMap<>();
    views.put(new WeightingView(), new Dimension(250, 620));
    views.put(new RankingTableView(), new Dimension(420, 620));
    views.put(new PositionsView(), new Dimension(420, 620));
    views.put(new BriefView(() -> {}), new Dimension(420, 620));
    views.put(new MaterialsView(), new Dimension(420, 620));
    views.put(new QuestionsView((material, property) -> {}), new Dimension(420, 620));
    views.put(new CandidateView(), new Dimension(580, 620));
    views.put(new FootView(Command.of("action.stop", null, () -> {})), new Dimension(1260, 60));
    return views;
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void nothingIsCut(Language language, Appearance appearance, TextSize text) {
    List<String> cut =
        Screen.on(
            () -> {
              text.take();
              dress(language, appearance);
              assumeTrue(canSay(language), "no font here shows Chinese");
              List<String> found = new ArrayList<>();
              String dressed = String.join("-", "" + language, "" + appearance, "" + text);
              views().forEach((view, size) -> found.addAll(cut(view, times(text, size), dressed)));
              return found;
            });
    assertThat(cut).isEmpty();
  }

  private static Dimension times(TextSize text, Dimension size) {
    double times = Integer.parseInt(text.font().replace("%", "")) / 100.0;
    return new Dimension((int) (times * size.width), (int) (times * size.height));
  }

  private static List<String> cut(View view, Dimension size, String dressed) {
    view.show(session);
    if (view instanceof CandidateView candidate) {
      IntStream.of(2, 1, 0).forEach(tab -> candidate.arrange(tab, 200));
    }
    JComponent panel = view.component();
    Painted.layOut(panel, size.width, size.height);
    String name = view.getClass().getSimpleName().replace("View", "").toLowerCase();
    Screen.keep(
        "layout-" + name + "-" + dressed.toLowerCase().replace('_', '-'), Painted.picture(panel));
    List<String> found = new ArrayList<>(Cuts.in(panel));
    if (view instanceof PositionsView) {
      JTabbedPane tabs =
          (JTabbedPane)
              Screen.all(panel).stream()
                  .filter(c -> "positions-tabs".equals(c.getName()))
                  .findFirst()
                  .orElseThrow();
      for (int tab = 1; tab < tabs.getTabCount(); tab++) {
        tabs.setSelectedIndex(tab);
        Painted.layOut(panel, size.width, size.height);
        found.addAll(Cuts.in(panel));
      }
    }
    if (view instanceof CandidateView candidate) {
      for (int tab = 1; tab < 3; tab++) {
        candidate.arrange(tab, 200);
        Painted.layOut(panel, size.width, size.height);
        found.addAll(Cuts.in(panel));
      }
      JComboBox<?> explained = named(panel, "explained-plugin");
      for (int i = 0; i < explained.getItemCount(); i++) {
        explained.setSelectedIndex(i);
        Painted.layOut(panel, size.width, size.height);
        found.addAll(Cuts.in(panel));
      }
    }
    return found;
  }

  private static JComboBox<?> named(JComponent panel, String name) {
    return Screen.all(panel).stream()
        .filter(c -> name.equals(c.getName()))
        .map(JComboBox.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("dresses")
  void textStandsOutFromItsGround(Language language, Appearance appearance) {
    List<String> faint =
        Screen.on(
            () -> {
              dress(language, appearance);
              return Contrast.faint();
            });
    assertThat(faint).isEmpty();
  }

  @Test
  void chineseShowsWhereAFontForItIsInstalled() {
    boolean installed =
        Stream.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getAllFonts())
            .anyMatch(font -> font.canDisplayUpTo("复合膜") < 0);
    assumeTrue(installed, "no font here shows Chinese: install fonts-droid-fallback");
    Screen.on(
        () -> {
          Appearance.LIGHT.apply();
          for (String key : List.of("Label.font", "Table.font", "Menu.font", "TextArea.font")) {
            Font font = UIManager.getFont(key);
            assertThat(font.canDisplayUpTo(TRADE)).as(key).isNegative();
            assertThat(font.deriveFont(Font.BOLD).canDisplayUpTo(TRADE)).as(key).isNegative();
          }
          return null;
        });
  }
}
