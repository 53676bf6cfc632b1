package plyworth.shared.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.SamplePlants;

class PlantTest {

  private static final Plant MILL = SamplePlants.mill();

  @Test
  void machinesOfThePlantStandBeforeServices() {
    List<WorkCentre> mixed =
        List.of(MILL.centres().get(MILL.centres().size() - 1), MILL.centres().get(0));
    assertThat(new Plant("Mill", mixed, MILL.webs(), "").centres())
        .extracting(WorkCentre::outside)
        .containsExactly(false, true);
  }

  @Test
  void idThatStandsTwiceIsRefused() {
    List<WorkCentre> twice = List.of(MILL.centres().get(0), MILL.centres().get(0));
    assertThatThrownBy(() -> new Plant("Mill", twice, MILL.webs(), ""))
        .hasMessageContaining("\"narrow-press\"");
  }

  @Test
  void plantWithMoreMachinesThanAnyoneLooksThroughIsRefused() {
    List<WorkCentre> many = Collections.nCopies(51, MILL.centres().get(0));
    assertThatThrownBy(() -> new Plant("Mill", many, MILL.webs(), ""))
        .hasMessageContaining("51 machines and services; name 50 or fewer");
  }

  @Test
  void plantThatBuysNothingIsRefused() {
    assertThatThrownBy(() -> new Plant("Mill", MILL.centres(), List.of(), ""))
        .hasMessageContaining("without webs");
  }

  @Test
  void chargeIsSetUpAndRate() {
    assertThat(new Charge(600, 55).cost(20_000)).isEqualTo(600 + 20 * 55);
  }

  @Test
  void minimumOrderByAreaWeighsWhatTheWebWeighs() {
    assertThat(new MinimumOrder(20_000, MinimumOrder.By.M2).kilograms(36.8)).isEqualTo(736);
    assertThat(new MinimumOrder(500, MinimumOrder.By.KG).kilograms(36.8)).isEqualTo(500);
    assertThat(MinimumOrder.UNKNOWN.kilograms(36.8)).isNaN();
  }
}
