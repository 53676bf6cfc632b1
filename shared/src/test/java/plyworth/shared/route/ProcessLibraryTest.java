package plyworth.shared.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plyworth.shared.data.DataException;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.LayerNotation;

class ProcessLibraryTest {

  private static final ProcessLibrary LIBRARY = ProcessLibrary.standard();

  @Test
  void allSeventeenAreThereAndEveryPassHasItsFigures() {
    assertThat(LIBRARY.processes()).hasSize(17);
    assertThat(LIBRARY.processes().values())
        .filteredOn(p -> p.role() != ProcessRole.WEB_PART)
        .allSatisfy(
            p ->
                assertThat(p.figures())
                    .as(p.id())
                    .containsKeys("speed", "setup-time", "running-waste", "hour-rate"));
  }

  @Test
  void everyFigureHasASourceAndOneUnit() {
    Map<String, String> units = new HashMap<>();
    for (Process process : LIBRARY.processes().values()) {
      process
          .figures()
          .forEach(
              (id, figure) -> {
                assertThat(figure.points()).allMatch(p -> !p.source().isBlank());
                assertThat(figure.unit())
                    .as(id)
                    .isEqualTo(units.computeIfAbsent(id, i -> figure.unit()));
              });
    }
  }

  @Test
  void inkIsSolidsWaterAndVolatileOrganicsAndNothingElse() {
    for (Process process : LIBRARY.processes().values()) {
      if (process.role() == ProcessRole.PRINT) {
        double sum =
            process.figure("ink-solids").typical()
                + process.figure("ink-water").typical()
                + process.figure("ink-voc").typical();
        assertThat(sum).as(process.id()).isBetween(1 - 1e-9, 1 + 1e-9);
      }
    }
  }

  @Test
  void webHasNoProcess() {
    assertThat(LIBRARY.role(Layer.web("bopet", 12))).isEqualTo(ProcessRole.WEB);
    assertThat(LIBRARY.role(Layer.gauge("ldpe", 12, "extrusion-lamination")))
        .isEqualTo(ProcessRole.BOND);
    assertThat(LIBRARY.require(ProcessLibrary.SLITTING).role()).isEqualTo(ProcessRole.FINISHING);
  }

  @Test
  void unknownProcessIsRefusedWithTheNearest() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LIBRARY.require("drybond"))
        .withMessage("the process \"@drybond\" is not known. Did you mean \"dry-bond\"?");
  }

  @Test
  void wrongRoleAndStrayFigureAreRefused() {
    String figures = "process,figure,at,low,typical,high,unit,kind,source\n";
    assertThatThrownBy(() -> ProcessLibrary.read("id,name,role,note\nx,X,glue,\n", figures))
        .isInstanceOf(DataException.class)
        .hasMessageContaining("line 2")
        .hasMessageContaining("\"glue\" is not a role");
    String stray = figures + "y,speed,,1,1,1,m/min,memory,from memory\n";
    assertThatThrownBy(() -> ProcessLibrary.read("id,name,role,note\nx,X,bond,\n", stray))
        .hasMessageContaining("\"@y\" is not known");
  }

  @Test
  void resinThatIsPutDownIsNoWebAnyMore() {
    Material ldpe = MaterialLibrary.standard().require("ldpe");
    Set<String> bought = LayerKinds.of(Layer.web("ldpe", 40), ldpe, LIBRARY);
    Layer melt = LayerNotation.readLayer("ldpe 12 um @extrusion-lamination");
    Set<String> extruded = LayerKinds.of(melt, ldpe, LIBRARY);
    assertThat(bought).containsAll(List.of("web", "film", "ldpe", "polyethylene", "sealable"));
    assertThat(extruded)
        .containsAll(List.of("resin", "bond", "@extrusion-lamination"))
        .doesNotContain("web", "film");
  }
}
