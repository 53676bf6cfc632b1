package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.shared.brief.Machine.SealZone;

/** What is said of walls between two must hold for every wall between them. */
class WarmingBoundsTest {

  private static final double[] SHARES = {0.9999, 0.99, 0.9, 0.7, 0.5, 0.3, 0.1, 0.01, 1e-4};

  private static List<LayerFigures> laminate(Random random) {
    List<LayerFigures> layers = new ArrayList<>();
    int count = 1 + random.nextInt(7);
    for (int i = 0; i < count; i++) {
      double um = Math.exp(random.nextDouble() * Math.log(200));
      double conductivity = random.nextInt(5) == 0 ? 220 : 0.08 + 0.3 * random.nextDouble();
      layers.add(Laminates.layer(um, 1, conductivity, 900 + 900 * random.nextDouble(), 1800));
    }
    return layers;
  }

  @ParameterizedTest
  @EnumSource(SealZone.class)
  void aKnownWallLiesWithinItsOwnBounds(SealZone zone) {
    Random random = new Random(3);
    for (int n = 0; n < 2000; n++) {
      Wall wall = Laminates.wall(laminate(random));
      double contact = Math.pow(10, -2 - 4 * random.nextDouble());
      WarmingBounds bounds = WarmingBounds.of(wall, wall, contact, zone);
      HeatingCurve curve = HeatingCurve.of(wall, contact, zone, random.nextBoolean());
      enclosed(bounds, curve, zone + " " + n);
    }
  }

  @ParameterizedTest
  @EnumSource(SealZone.class)
  void everyWallBetweenTwoLiesWithinTheirBounds(SealZone zone) {
    Random random = new Random(4);
    for (int n = 0; n < 500; n++) {
      List<LayerFigures> inner = laminate(random);
      List<LayerFigures> thicker = new ArrayList<>(inner);
      thicker.addAll(laminate(random));
      double contact = Math.pow(10, -2 - 4 * random.nextDouble());
      Wall low = Laminates.wall(inner);
      Wall high = Laminates.wall(thicker);
      WarmingBounds bounds = WarmingBounds.of(low, high, contact, zone);
      for (Wall wall : List.of(low, high)) {
        enclosed(bounds, HeatingCurve.of(wall, contact, zone, false), zone + " " + n);
      }
    }
  }

  private static void enclosed(WarmingBounds bounds, HeatingCurve curve, String name) {
    for (double share : SHARES) {
      double time = curve.time(share);
      assertThat(time)
          .as("time to %s in %s", share, name)
          .isBetween(bounds.leastTime(share), bounds.mostTime(share));
      assertThat(curve.remaining(time))
          .as("inverse of the time to %s in %s", share, name)
          .isCloseTo(share, within(1e-9));
      assertThat(curve.remaining(time))
          .as("share after %s s in %s", time, name)
          .isBetween(bounds.leastRemaining(time), bounds.mostRemaining(time));
    }
  }
}
