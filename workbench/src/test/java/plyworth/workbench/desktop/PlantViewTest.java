package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JComboBox;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.shared.plant.Plant;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.LayerNotation;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.candidate.ExplanationPanel;
import plyworth.workbench.desktop.candidate.FindingsPanel;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.session.Detail;
import plyworth.workbench.desktop.word.PlantWords;

/** What the window tells of a plant, painted without a window. */
class PlantViewTest {

  private static final Plant PLANT =
      StudyFile.open(Path.of("../studies/sugar-stick.study.json")).study().plant().orElseThrow();
  private static final Ranked RANKED = SmallStudy.ranked(SmallStudy.few().with(PLANT));

  @ParameterizedTest
  @EnumSource(Appearance.class)
  void theRouteInThePlantStandsAmongTheExplanations(Appearance appearance) {
    Screen.on(
        () -> {
          appearance.apply();
          ExplanationPanel panel = new ExplanationPanel();
          panel.show(Detail.of(RANKED, RANKED.study().baseline()));
          ((JComboBox<?>) panel.target()).setSelectedItem("Plant and supply");
          Painted.layOut(panel.component(), 700, 1600);
          Screen.keep(
              "plant-" + appearance.name().toLowerCase(Locale.ROOT),
              Painted.picture(panel.component()));
          assertThat(Screen.all(panel.component()))
              .filteredOn(JTable.class::isInstance)
              .anySatisfy(
                  table ->
                      assertThat(((JTable) table).getValueAt(0, 1))
                          .isEqualTo("Gravure printer in the next valley"));
          return null;
        });
  }

  @Test
  void theReasonStandsAmongTheFindings() {
    String heavy = "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 90 g/m2";
    FindingsPanel panel = new FindingsPanel();
    Screen.on(
        () -> {
          panel.show(RANKED, RANKED.sheet(LayerNotation.readStructure(heavy)));
          return null;
        });
    assertThat(((Page) panel.target()).getText().replaceAll("\\s+", " "))
        .contains("kraft-paper 90 g/m2 is not on offer in that gauge; on offer: 40 g/m2");
  }

  @Test
  void theBriefNamesMachinesServicesAndWebs() {
    assertThat(PlantWords.centres(PLANT, false))
        .contains("Extrusion line (extrusion-coating, extrusion-lamination), webs of 600 to");
    assertThat(PlantWords.centres(PLANT, true)).contains("900 EUR and 65 EUR per");
    assertThat(PlantWords.webs(PLANT))
        .contains("barrier-paper-high 75 g/m2, 56 days, not approved");
  }
}
