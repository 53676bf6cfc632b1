package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Machine.SealZone;
import plyworth.shared.brief.Pack;

/**
 * Jaw temperatures and windows against worked cases: BOPP 20 / adhesive 2 / cast PP 30, seal
 * initiation 115 °C, margin 5 K, outside limit 145 °C, contact 3000 W/(m²·K). Expected figures:
 * analytic, by Laplace inversion and by finite volumes.
 */
class SealingTest {

  private static Settings settings(double dwell, SealZone zone, double jaw) {
    Machine machine =
        new Machine("machine", 1, jaw, 0, 3000, dwell, zone, 1, 10, 0.1, 1.25, 0, 1e6, 0, 1, 0);
    Pack pack = new Pack(Pack.Format.PILLOW, 120, 200, 12, 12, 0);
    return new Settings(machine, pack, 23, 5, 0, 8, false);
  }

  private static double coolest(Wall wall, double initiation, double dwell, SealZone zone) {
    Settings settings = settings(dwell, zone, 140);
    Sealing sealing = new Sealing(settings);
    return sealing.jawFor(sealing.target(initiation), settings.thickest(wall).remaining(dwell));
  }

  @ParameterizedTest
  @CsvSource({
    "0.05, 164.3, 270.9",
    "0.10, 129.5, 175.8",
    "0.15, 122.5, 147.2",
    "0.20, 120.7, 134.7",
    "0.30, 120.1, 124.8"
  })
  void shortDwellAsksForHotJawsAboveAllInTheFinCrossing(double dwell, double plain, double fin) {
    Wall wall = Laminates.wall(Laminates.boppCast());
    assertThat(coolest(wall, 115, dwell, SealZone.ONE_ON_ONE)).isCloseTo(plain, within(0.5));
    assertThat(coolest(wall, 115, dwell, SealZone.ONE_ON_THREE)).isCloseTo(fin, within(0.5));
  }

  @ParameterizedTest
  @CsvSource({"0.15, 153.9, 261.4", "0.25, 123.0, 183.3", "0.50, 107.4, 130.0"})
  void paperAsksForHotterJawsThanFilm(double dwell, double plain, double fin) {
    Wall wall = Laminates.wall(Laminates.paperFoil());
    assertThat(coolest(wall, 100, dwell, SealZone.ONE_ON_ONE)).isCloseTo(plain, within(0.5));
    assertThat(coolest(wall, 100, dwell, SealZone.ONE_ON_THREE)).isCloseTo(fin, within(0.5));
  }

  @ParameterizedTest
  @CsvSource({"0.15, -2.2", "0.20, 10.3", "0.30, 20.2"})
  void theFinCrossingDecidesTheWindowOfAFilm(double dwell, double window) {
    Wall wall = Laminates.wall(Laminates.boppCast());
    double coolest = coolest(wall, 115, dwell, SealZone.ONE_ON_THREE);
    Sealing sealing = new Sealing(settings(dwell, SealZone.ONE_ON_THREE, 140));
    double hottest =
        sealing.hottest(
            145, 175, settings(dwell, SealZone.ONE_ON_ONE, 140).plain(wall).remaining(dwell));
    assertThat(sealing.window(coolest, hottest)).isCloseTo(window, within(0.5));
  }

  @Test
  void jawsAtTheTargetNeverSeal() {
    Sealing sealing = new Sealing(settings(0.2, SealZone.ONE_ON_ONE, 110));
    HeatingCurve curve =
        settings(0.2, SealZone.ONE_ON_ONE, 110).plain(Laminates.wall(Laminates.paperFoil()));
    assertThat(sealing.never(105)).isTrue();
    assertThat(sealing.dwell(curve, 105)).isEqualTo(Sealing.NEVER_S);
    assertThat(sealing.dwell(curve, 90)).isLessThan(0.5);
  }

  @Test
  void aColdSealTakesNoHeatingTime() {
    Sealing sealing = new Sealing(settings(0.2, SealZone.ONE_ON_ONE, 25));
    HeatingCurve curve =
        settings(0.2, SealZone.ONE_ON_ONE, 25).plain(Laminates.wall(Laminates.boppCast()));
    assertThat(sealing.dwell(curve, 15)).isZero();
  }
}
