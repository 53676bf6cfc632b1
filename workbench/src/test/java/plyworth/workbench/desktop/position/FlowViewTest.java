package plyworth.workbench.desktop.position;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartFile;
import plyworth.workbench.chart.ChartTheme;
import plyworth.workbench.chart.FlowColumns;
import plyworth.workbench.chart.FlowDrawing;
import plyworth.workbench.desktop.Painted;
import plyworth.workbench.desktop.Screen;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.word.Language;

/** The candidate graph of a study, painted without a window. */
class FlowViewTest {

  private static final FlowFigures.Choice FOIL = new FlowFigures.Choice(3, Set.of(1));

  @TempDir Path folder;

  private static FlowFigures figures(Optional<FlowFigures.Choice> choice) {
    Ranked ranked = SmallStudy.ranked(SmallStudy.few());
    return FlowFigures.of(null, ranked.study(), ranked, choice, () -> false);
  }

  private static FlowFigures unranked(Study study) {
    return FlowFigures.of(null, study, null, Optional.empty(), () -> false);
  }

  @AfterAll
  static void asBefore() {
    Screen.on(
        () -> {
          Language.ENGLISH.speak();
          Appearance.LIGHT.apply();
          return null;
        });
  }

  @ParameterizedTest
  @EnumSource(Appearance.class)
  void itIsPaintedInEveryAppearance(Appearance appearance) {
    Screen.on(
        () -> {
          appearance.apply();
          paint("flows-painted-" + appearance.name().toLowerCase(), figures(Optional.of(FOIL)));
          return null;
        });
    assertThat(Path.of("target/screens")).isNotEmptyDirectory();
  }

  @Test
  void itIsPaintedInChinese() {
    boolean said =
        Screen.on(
            () -> {
              Language.CHINESE.speak();
              Appearance.LIGHT.apply();
              boolean shows = UIManager.getFont("Label.font").canDisplayUpTo("候选结构图") < 0;
              if (shows) {
                paint("flows-painted-chinese", figures(Optional.of(FOIL)));
              }
              Language.ENGLISH.speak();
              return shows;
            });
    assumeTrue(said, "no font here shows Chinese");
  }

  private static void paint(String name, FlowFigures figures) {
    FlowView view = new FlowView(choice -> {});
    view.show(figures);
    JComponent panel = view.component();
    Painted.layOut(panel, 1100, 620);
    Screen.keep(name, Painted.picture(panel));
  }

  @Test
  void everyPositionSumsToAllCandidates() {
    FlowColumns columns = OptionColumns.of(figures(Optional.empty()), false).columns();
    for (FlowColumns.Column column : columns.columns()) {
      assertThat(column.boxes().stream().mapToLong(FlowColumns.Box::candidates).sum())
          .isEqualTo(columns.candidates());
    }
  }

  @Test
  void whatRunsThroughTheSelectedIsAPartOfEachRibbon() {
    OptionColumns shown = OptionColumns.of(figures(Optional.of(FOIL)), false);
    assertThat(shown.selected()).contains(new FlowDrawing.At(3, 1));
    List<FlowColumns.Ribbon> outermost =
        shown.columns().ribbons().stream().filter(r -> r.column() == 0).toList();
    assertThat(outermost).allMatch(r -> r.chosen() < r.candidates());
    assertThat(outermost.stream().mapToLong(FlowColumns.Ribbon::chosen).sum())
        .isEqualTo(shown.columns().box(3, 1).candidates());
  }

  @Test
  void manyGaugesOfAMaterialStandTogetherWithTheirSum() {
    OptionColumns shown = OptionColumns.of(unranked(SmallStudy.many()), false);
    FlowColumns columns = shown.columns();
    assertThat(columns.boxes(1)).isEqualTo(1);
    assertThat(columns.box(1, 0).label()).isEqualTo("kraft-paper 40 to 120 g/m² (81)");
    assertThat(columns.box(1, 0).candidates()).isEqualTo(columns.candidates());
    assertThat(shown.tip(new FlowDrawing.At(1, 0))).contains("kraft-paper 40 g/m²", "…");
  }

  @Test
  void theTableHoldsWhatTheDrawingShows() {
    OptionColumns shown = OptionColumns.of(figures(Optional.of(FOIL)), false);
    int row = shown.row(new FlowDrawing.At(3, 1));
    List<String> cells = shown.table().rows().get(row);
    assertThat(cells.get(1)).isEqualTo("aluminium-foil 7 µm");
    assertThat(cells.get(3)).isEqualTo(cells.get(5));
    assertThat(shown.at(row)).isEqualTo(new FlowDrawing.At(3, 1));
  }

  @Test
  void itIsWrittenAsAVectorDrawing() throws IOException {
    FlowDrawing drawing =
        new FlowDrawing(
            OptionColumns.of(figures(Optional.empty()), false).columns(),
            ChartTheme.PAPER,
            Optional.empty());
    Path file = folder.resolve("graph.svg");
    ChartFile.write(drawing, 1000, 600, file);
    assertThat(Files.readString(file)).contains("<svg", "glassine 50 g/m²");
  }

  @Test
  void oneWhoseWeightsAloneMovedIsNotCountedAgain() {
    Ranked ranked = SmallStudy.ranked(SmallStudy.few());
    FlowFigures known = FlowFigures.of(null, ranked.study(), ranked, Optional.empty(), () -> false);
    Study other = ranked.study().with(ranked.study().weightings().get(1));
    assertThat(known.areOf(other, ranked.again(other, 50), Optional.empty())).isTrue();
    assertThat(known.areOf(SmallStudy.few("nothing"), ranked, Optional.empty())).isFalse();
  }
}
