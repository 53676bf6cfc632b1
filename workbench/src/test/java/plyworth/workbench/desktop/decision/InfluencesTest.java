package plyworth.workbench.desktop.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.shared.quantity.Range;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.ShareBars;
import plyworth.workbench.chart.ShareChart;
import plyworth.workbench.desktop.Painted;
import plyworth.workbench.desktop.Screen;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ChartCanvas;
import plyworth.workbench.desktop.part.ChartExport;
import plyworth.workbench.desktop.part.ChartPane;
import plyworth.workbench.robustness.Influence;
import plyworth.workbench.robustness.Sensitivity;
import plyworth.workbench.robustness.UncertainInput;

/** What uncertain inputs do to a figure, in words and drawn. */
class InfluencesTest {

  private static final Ranked RANKED = SmallStudy.ranked(SmallStudy.few());

  private static Influence influence(String id, double first, double total) {
    return new Influence(
        new UncertainInput(id, new Range(1, 2, 4), false),
        new Influence.Index(first, first - 0.05, first + 0.05),
        new Influence.Index(total, total - 0.05, total + 0.05));
  }

  private static Influences words(double deviation, Influence... influences) {
    return new Influences(
        RANKED,
        new Sensitivity(
            List.of(influences),
            12,
            deviation,
            0,
            java.util.Set.of(),
            new Sensitivity.Plan(16, 1)));
  }

  private static final Influences THREE =
      words(
          1.5,
          influence("ldpe/price", 0.5, 0.6),
          influence("kraft-paper/price", 0.31, 0.3),
          influence("aluminium-foil/price", 0.0, 0.004));

  @Test
  void anInputIsNamedByItsMaterialAndTheNegligibleIsLeftOutAndCounted() {
    ShareBars bars = THREE.bars();
    assertThat(bars.bars()).hasSize(2);
    assertThat(bars.bars().get(0).name()).startsWith("1  Low-density polyethylene");
    assertThat(THREE.note()).contains("2 inputs that matter most", "the other 1");
  }

  /** By chance an index of first order may be estimated above the total one. */
  @Test
  void whatAnInputDoesAloneNeverExceedsWhatItDoesInAll() {
    List<Double> shares = THREE.bars().bars().get(1).shares();
    assertThat(shares.get(0)).isEqualTo(0.3);
    assertThat(shares.get(1)).isZero();
  }

  @Test
  void theTableHoldsBothIndicesWithTheirIntervals() {
    ChartTable table = THREE.table();
    assertThat(table.rows().get(0)).contains("50.0 %", "45 % – 55 %", "60.0 %", "55 % – 65 %");
  }

  @Test
  void whatNothingMovesIsSaid() {
    assertThat(words(0, influence("ldpe/price", 0, 0)).note()).contains("None of 1");
  }

  @ParameterizedTest
  @EnumSource(Appearance.class)
  void theyAreDrawnInLightAndDark(Appearance appearance) {
    Screen.on(
        () -> {
          appearance.apply();
          ChartCanvas canvas = new ChartCanvas("sensitivity", "name", "description");
          canvas.setChart(
              ShareChart.of(THREE.bars(), Appearance.chartTheme(), OptionalInt.empty()));
          ChartPane pane =
              new ChartPane("sensitivity", canvas, new ChartExport(canvas, canvas::getChart));
          pane.show(THREE.table(), THREE.note());
          Painted.layOut(pane.component(), 600, 300);
          var picture = Painted.picture(pane.component());
          Screen.keep("sensitivity-" + appearance.name().toLowerCase(Locale.ROOT), picture);
          assertThat(new java.awt.Color(picture.getRGB(4, 4)).getRed() > 128)
              .isEqualTo(appearance == Appearance.LIGHT);
          return null;
        });
  }
}
