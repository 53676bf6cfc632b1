package plyworth.workbench.desktop.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.brief.Pack;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.Painted;
import plyworth.workbench.desktop.Screen;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.word.Language;

/** The form of a brief, painted without a window. */
class BriefFormTest {

  private static final Study MINT = SmallStudy.few();

  @BeforeEach
  @AfterEach
  void undress() {
    Screen.on(
        () -> {
          Language.ENGLISH.speak();
          Appearance.LIGHT.apply();
          return null;
        });
  }

  private static BriefForm form() {
    return new BriefForm(MINT, BriefDraft.of(MINT), () -> Optional.of(MINT.baseline()));
  }

  static Stream<Arguments> dresses() {
    return Stream.of(Language.values())
        .flatMap(l -> Stream.of(Appearance.values()).map(a -> Arguments.of(l, a)));
  }

  @ParameterizedTest
  @MethodSource("dresses")
  void nothingIsCut(Language language, Appearance appearance) {
    List<String> cut =
        Screen.on(
            () -> {
              language.speak();
              appearance.apply();
              assumeTrue(
                  language == Language.ENGLISH
                      || UIManager.getFont("Label.font").canDisplayUpTo("研究包装") < 0,
                  "no font here shows Chinese");
              return cuts(form());
            });
    assertThat(cut).isEmpty();
  }

  private static List<String> cuts(BriefForm form) {
    JComponent panel = form.component();
    JTabbedPane pages = part(panel, "brief-pages", JTabbedPane.class);
    List<String> cuts = new ArrayList<>();
    for (int i = 0; i < pages.getTabCount(); i++) {
      pages.setSelectedIndex(i);
      Painted.layOut(panel, 1140, 660);
      for (Component c : Screen.all(pages.getComponentAt(i))) {
        boolean names =
            c instanceof JLabel || c instanceof AbstractButton || c instanceof JComboBox<?>;
        if (names && c.isVisible() && c.getWidth() > 0) {
          note(cuts, c.getPreferredSize().width > c.getWidth() + 1, c);
        } else if (c instanceof JTextArea area && !area.isEditable() && area.isVisible()) {
          note(cuts, area.getPreferredSize().height > area.getHeight() + 1, c);
        }
      }
    }
    return cuts;
  }

  private static void note(List<String> cuts, boolean cut, Component part) {
    if (cut) {
      cuts.add(part.getName() + " " + part);
    }
  }

  private static <C extends Component> C part(JComponent root, String name, Class<C> type) {
    return Screen.all(root).stream()
        .filter(c -> name.equals(c.getName()))
        .map(type::cast)
        .findFirst()
        .orElseThrow();
  }

  private static JTextField field(BriefForm form, String name) {
    return part(form.component(), "field:" + name, JTextField.class);
  }

  private static String note(BriefForm form, String name) {
    return part(form.component(), "note:" + name, JTextArea.class).getText();
  }

  @Test
  void everyInputHasANameForThoseWhoHearIt() {
    List<String> nameless =
        Screen.on(
            () -> {
              BriefForm form = form();
              List<String> found = new ArrayList<>();
              for (Component c : Screen.all(form.component())) {
                boolean input = c.getName() != null && c.getName().startsWith("field:");
                String name = c.getAccessibleContext().getAccessibleName();
                if (input && (name == null || name.isBlank())) {
                  found.add(c.getName());
                }
              }
              return found;
            });
    assertThat(nameless).isEmpty();
  }

  @Test
  void aFigureInAnotherUnitIsSaidInTheOneItIsKeptIn() {
    Screen.on(
        () -> {
          BriefForm form = form();
          field(form, "pack-width").setText("1.25 in");
          assertThat(note(form, "pack-width")).startsWith("= 31.8 mm.");
          field(form, "jaw").setText("302 °F");
          assertThat(note(form, "jaw")).startsWith("= 150 °C.");
          field(form, "critical-activity").setText("6 %");
          assertThat(note(form, "critical-activity")).startsWith("= a water activity of 0.");
          field(form, "pack-width").setText("31 mm");
          assertThat(note(form, "pack-width")).isEqualTo("mm, cm, in");
          return null;
        });
  }

  @Test
  void aProductOfTheLibraryBringsItsCriticalActivityAndItsSource() {
    Screen.on(
        () -> {
          BriefForm form = form();
          part(form.component(), "field:sorption", JComboBox.class).setSelectedIndex(1);
          JComboBox<?> known = part(form.component(), "field:known-product", JComboBox.class);
          known.setSelectedIndex(known.getItemCount() - 1);
          assertThat(field(form, "critical-activity").getText()).isNotEqualTo("0.5");
          assertThat(note(form, "known-product")).contains("Loses its crispness");
          assertThat(form.reading().study()).isPresent();
          return null;
        });
  }

  @Test
  void aMonthThatIsWrongIsSaidBesideTheTable() {
    Screen.on(
        () -> {
          BriefForm form = form();
          part(form.component(), "field:climate", JComboBox.class).setSelectedIndex(2);
          field(form, "climate-name").setText("port town");
          JTable months = part(form.component(), "field:months", JTable.class);
          for (int row = 0; row < 12; row++) {
            months.setValueAt(row == 7 ? "64 °F" : "18 °C", row, 1);
            months.setValueAt(row == 7 ? "102 %" : "70", row, 2);
          }
          part(form.component(), "brief-pages", JTabbedPane.class).setSelectedIndex(2);
          Painted.layOut(form.component(), 1140, 660);
          Screen.keep("brief-months", Painted.picture(form.component()));
          assertThat(note(form, "months"))
              .contains("Month 8: Relative humidity: Write a figure between 0 % and 100 %");
          return null;
        });
  }

  @Test
  void aFormThatSaysWhatItBeganWithWasNotTypedInto() {
    Screen.on(
        () -> {
          BriefForm form = form();
          assertThat(form.typed()).isFalse();
          field(form, "lanes").setText("7");
          assertThat(form.typed()).isTrue();
          field(form, "lanes").setText("6");
          assertThat(form.typed()).isFalse();
          return null;
        });
  }

  /** Dots that are not of the ground. */
  private static long inked(BufferedImage picture) {
    int ground = picture.getRGB(picture.getWidth() - 1, 0);
    return IntStream.of(
            picture.getRGB(
                0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth()))
        .filter(dot -> dot != ground)
        .count();
  }

  @ParameterizedTest
  @EnumSource(Pack.Format.class)
  void thePackIsDrawnWithItsSealsAndDimensions(Pack.Format format) {
    Pack pack = new Pack(format, 80, 110, 9, 12, 20);
    Screen.on(
        () -> {
          PackDrawing drawing = new PackDrawing();
          JPanel panel = new JPanel(new BorderLayout());
          panel.add(drawing);
          drawing.show(Optional.of(pack));
          Painted.layOut(panel, 640, 330);
          BufferedImage picture = Painted.picture(panel);
          Screen.keep("pack-" + format.name().toLowerCase(Locale.ROOT), picture);
          drawing.show(Optional.empty());
          assertThat(drawing.caption()).contains("when its dimensions are right");
          assertThat(inked(picture)).isGreaterThan(2 * inked(Painted.picture(panel)));
          return null;
        });
    PackShape shape = new PackShape(pack);
    assertThat(shape.seals()).allMatch(seal -> shape.outline().contains(seal));
    assertThat(shape.web().getWidth() * shape.web().getHeight() * 1e-6)
        .isEqualTo(pack.filmAreaM2());
    assertThat(shape.folds()).isSorted();
    assertThat(shape.folds()[0] + shape.folds()[shape.folds().length - 1])
        .isEqualTo(shape.web().getWidth());
  }
}
