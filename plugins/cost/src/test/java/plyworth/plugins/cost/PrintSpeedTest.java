package plyworth.plugins.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.route.Process;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

/** A water-based press runs faster on paper, which drinks, than on film: common practice. */
class PrintSpeedTest {

  private static final Process PRESS =
      Shop.with(Shop.with(Shop.plant().require("press"), "speed", 200), "speed-paper", 300);

  private static final ScoringContext CONTEXT =
      Orders.context(Orders.sticks(), Shop.materials(), Shop.plant().with(List.of(PRESS)));

  private static double printSpeed(String structure) {
    Bill bill = Bill.of(LayerNotation.readStructure(structure), new Tariff(CONTEXT), 2e6);
    PassRates rates = bill.passes().get(0).rates();
    return 1 / (rates.minutesPerM2() * 0.85);
  }

  @ParameterizedTest
  @CsvSource({
    "ink 1.4 g/m2 @press / paper 50 g/m2, 300",
    "ink 1.4 g/m2 @press / pet 12 um, 200",
    "pet 12 um / ink 1.4 g/m2 @press, 200",
    "paper 50 g/m2 / ink 1.4 g/m2 @press, 300",
    "adhesive 1 g/m2 @press / ink 1.4 g/m2 @press / pet 12 um, 200"
  })
  void thePressRunsAtTheSpeedOfTheWebItTouches(String structure, double metresPerMinute) {
    assertThat(printSpeed(structure)).isCloseTo(metresPerMinute, within(1e-9));
  }

  @Test
  void aPressThatNamesNoSpeedForPaperRunsAtItsSpeed() {
    ScoringContext plain = Orders.context(Orders.sticks());
    Bill bill = Bill.of(Orders.FOIL_ROUTE, new Tariff(plain), 2e6);
    assertThat(1 / (bill.passes().get(0).rates().minutesPerM2() * 0.85))
        .isCloseTo(300, within(1e-9));
  }
}
