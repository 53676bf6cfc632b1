package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.shared.brief.Machine.SealZone;

/** Two ways to the same conduction: finite volumes, and the two slowest exponentials. */
class ConductionTest {

  private static final double USUAL = 1.0 / 3000;

  private static Conduction.Course course(
      List<LayerFigures> layers, double contact, SealZone zone, boolean lap, double duration) {
    return Conduction.of(layers, contact, zone, lap, 120).course(duration, 4000);
  }

  /** Slab series (Carslaw and Jaeger, from memory): 11.936 ms. */
  @Test
  void finiteVolumesReproduceTheSlabSeries() {
    Conduction.Course course =
        course(List.of(Laminates.ldpe(50)), 0, SealZone.ONE_ON_ONE, false, 0.02);
    assertThat(1000 * course.time(40.0 / 127)).isCloseTo(11.936, withPercentage(0.05));
  }

  @Test
  void finiteVolumesReproduceTheWorkedLaminate() {
    Conduction.Course course =
        course(Laminates.paperFoil(), USUAL, SealZone.ONE_ON_ONE, false, 0.3);
    assertThat(1000 * course.time(55.0 / 137)).isCloseTo(140.106, withPercentage(0.05));
  }

  @ParameterizedTest
  @EnumSource(SealZone.class)
  void bothWaysAgreeOnTheLaminatesOfTheTrade(SealZone zone) {
    for (boolean lap : new boolean[] {false, true}) {
      agree(Laminates.paperFoil(), USUAL, zone, lap);
      agree(Laminates.paperPolyester(), 1e-4, zone, lap);
      agree(Laminates.polyesterFoil(), USUAL, zone, lap);
      agree(Laminates.boppDuplex(), 1e-3, zone, lap);
      agree(Laminates.paperPolyethylene(), 1e-5, zone, lap);
    }
  }

  @ParameterizedTest
  @EnumSource(SealZone.class)
  void bothWaysAgreeOnRandomLaminates(SealZone zone) {
    Random random = new Random(7);
    for (int n = 0; n < 25; n++) {
      List<LayerFigures> layers = new ArrayList<>();
      int count = 1 + random.nextInt(6);
      for (int i = 0; i < count; i++) {
        double um = Math.exp(random.nextDouble() * Math.log(100));
        double conductivity = random.nextInt(6) == 0 ? 220 : 0.1 + 0.3 * random.nextDouble();
        layers.add(Laminates.layer(um, 1, conductivity, 900 + 600 * random.nextDouble(), 1800));
      }
      agree(layers, Math.pow(10, -3 - 2 * random.nextDouble()), zone, random.nextBoolean());
    }
  }

  /** Within 0.3 % where the seal comes half the way to the jaw or more. */
  private static void agree(List<LayerFigures> layers, double contact, SealZone zone, boolean lap) {
    Wall wall = Laminates.wall(layers);
    HeatingCurve curve = HeatingCurve.of(wall, contact, zone, lap);
    Conduction.Course course = course(layers, contact, zone, lap, 5 / curve.slowest());
    for (double share : new double[] {0.5, 0.3, 0.1, 0.02}) {
      assertThat(curve.time(share))
          .as("share %s of %s in %s, contact %s", share, layers, zone, contact)
          .isCloseTo(course.time(share), withPercentage(0.3));
    }
  }
}
