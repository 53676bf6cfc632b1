package plyworth.workbench.desktop.candidate;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.Painted;
import plyworth.workbench.desktop.Screen;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.session.Detail;

/** The panels of the selected structure, painted without a window. */
class CandidatePanelsTest {

  private static final Ranked RANKED = SmallStudy.ranked(SmallStudy.few());
  private static final Structure BEST = RANKED.structure(RANKED.best().get(0).path());
  private static final Structure TODAY = RANKED.study().baseline();

  @BeforeAll
  static void dress() {
    Screen.on(
        () -> {
          Appearance.LIGHT.apply();
          return null;
        });
  }

  private static Detail detail(Structure structure) {
    Detail quick = Detail.of(RANKED, structure);
    return quick.with(quick.workOutRanges(() -> false));
  }

  private static JTable figures(Detail detail) {
    FiguresPanel panel = new FiguresPanel();
    panel.show(detail);
    Painted.layOut(panel.component(), 600, 500);
    return table(panel.component());
  }

  private static JTable table(JComponent panel) {
    return Screen.all(panel).stream()
        .filter(JTable.class::isInstance)
        .map(JTable.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static List<String> row(JTable table, String criterion) {
    return Stream.iterate(0, r -> r + 1)
        .limit(table.getRowCount())
        .filter(r -> table.getValueAt(r, 0).equals(criterion))
        .map(
            r ->
                Stream.iterate(1, c -> c + 1)
                    .limit(5)
                    .map(c -> (String) table.getValueAt(r, c))
                    .toList())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyFigureStandsBesideTodaysWithItsUnitAndRange() {
    JTable table = Screen.on(() -> figures(detail(BEST)));
    List<String> cost = row(table, "Cost per 1000 good packs");
    assertThat(cost.get(0)).isEqualTo("EUR");
    assertThat(cost.get(1)).matches("[0-9.]+");
    assertThat(cost.get(2)).matches("[0-9.]+ – [0-9.]+");
    assertThat(cost.get(3)).matches("[0-9.]+");
    boolean cheaper = Double.parseDouble(cost.get(1)) < Double.parseDouble(cost.get(3));
    assertThat(cost.get(4)).isEqualTo(cheaper ? "better" : "worse");
  }

  @Test
  void whatDoesNotApplyIsADashWithItsReason() {
    JTable table = Screen.on(() -> figures(detail(BEST)));
    assertThat(row(table, "Loss of volatile content").get(1)).isEqualTo("–");
    FigureRows rows = (FigureRows) table.getModel();
    for (int r = 0; r < rows.getRowCount(); r++) {
      if (rows.getValueAt(r, 0).equals("Loss of volatile content")) {
        assertThat(rows.tip(r, 2)).contains("Not applicable: ");
      }
    }
  }

  @Test
  void noFigureIsCut() {
    JTable table = Screen.on(() -> figures(detail(BEST)));
    for (int r = 0; r < table.getRowCount(); r++) {
      for (int c = 1; c < table.getColumnCount(); c++) {
        Component cell = table.prepareRenderer(table.getCellRenderer(r, c), r, c);
        assertThat(cell.getPreferredSize().width)
            .as(table.getValueAt(r, c).toString())
            .isLessThanOrEqualTo(table.getColumnModel().getColumn(c).getWidth());
      }
    }
  }

  @Test
  void todaysStructureIsNotComparedWithItself() {
    JTable table = Screen.on(() -> figures(detail(TODAY)));
    assertThat(row(table, "Cost per 1000 good packs").get(4)).isEmpty();
  }

  @Test
  void theCrossSectionIsToScale() {
    CrossSection section = new CrossSection();
    section.show(TODAY, TODAY, RANKED.study().materialsAtHand());
    section.setSize(400, 300);
    LayerStack stack = LayerStack.of(TODAY, RANKED.study().materialsAtHand());
    double[] middles = stack.middles(0, 2);
    double foil = stack.bands().get(3).gauge();
    assertThat(foil).isEqualTo(7);
    assertThat(middles[4] - middles[3]).isEqualTo(foil + stack.bands().get(4).gauge());
    assertThat(stack.tip(2 * (stack.gaugeUm() - 1), 2)).contains("25 µm", "extrusion-coating");
    assertThat(stack.tip(2 * stack.gaugeUm() + 9, 2)).isNull();
  }

  @Test
  void aStructureThatIsNotOnOfferSaysWhyInItsFindings() {
    Structure bare = LayerNotation.readStructure("kraft-paper 50 g/m2");
    FindingsPanel panel = new FindingsPanel();
    Screen.on(
        () -> {
          panel.show(RANKED, RANKED.sheet(bare));
          return null;
        });
    assertThat(((Page) panel.target()).getText()).contains("Not on offer");
  }

  @ParameterizedTest
  @EnumSource(Appearance.class)
  void theExplanationBreaksItsTextsAndScrollsItsTables(Appearance appearance) {
    Screen.on(
        () -> {
          appearance.apply();
          ExplanationPanel panel = new ExplanationPanel();
          panel.show(detail(BEST));
          Painted.layOut(panel.component(), 560, 900);
          for (Component part : Screen.all(panel.component())) {
            if (part instanceof JTextArea words && words.isVisible()) {
              assertThat(words.getWidth()).as(words.getText()).isBetween(300, 560);
              assertThat(words.getHeight()).isEqualTo(words.getPreferredSize().height);
            }
          }
          BufferedImage picture = Painted.picture(panel.component());
          Screen.keep(
              "explanation-" + appearance.name().toLowerCase(java.util.Locale.ROOT), picture);
          assertThat(new java.awt.Color(picture.getRGB(8, 8)).getRed() > 128)
              .isEqualTo(appearance == Appearance.LIGHT);
          return null;
        });
  }
}
