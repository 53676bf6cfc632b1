package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Machine.SealZone;

/** The short forms of the stacks, which use that a wall has the determinant 1, against products. */
class SealStackTest {

  private static final double CONTACT = 1.0 / 3000;
  private static final Wall WEB = Laminates.wall(Laminates.polyesterFoil());
  private static final Wall TURNED = Laminates.wall(reversed(Laminates.polyesterFoil()));
  private static final Wall JAW = Wall.layer(CONTACT, 0);

  private static List<LayerFigures> reversed(List<LayerFigures> layers) {
    List<LayerFigures> reversed = new ArrayList<>(layers);
    Collections.reverse(reversed);
    return reversed;
  }

  private static SealStack stack(SealZone zone, boolean sameWay) {
    Walls webs = Walls.room();
    webs.put(0, WEB);
    return new SealStack().pile(webs, CONTACT, zone, sameWay);
  }

  private static void same(SeriesColumns found, double[] expected) {
    for (int n = 0; n <= Series.ORDER; n++) {
      assertThat(found.power(n)[0] / expected[n]).as("power " + n).isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void oneOnThreeIsTheWholeWallToTheInsulatedMiddle() {
    same(stack(SealZone.ONE_ON_THREE, false).denominator(), JAW.then(WEB).then(TURNED).a());
    same(stack(SealZone.ONE_ON_THREE, false).numerator(), WEB.d());
  }

  @Test
  void oneOnTwoLetsBothJawsMeetAtTheInterface() {
    meets(JAW.then(TURNED).then(WEB), false);
    meets(JAW.then(WEB).then(WEB), true);
  }

  private static void meets(Wall far, boolean sameWay) {
    Wall near = JAW.then(WEB);
    SealStack stack = stack(SealZone.ONE_ON_TWO, sameWay);
    same(stack.denominator(), Series.products(far.a(), near.b(), far.b(), near.a()));
    for (int n = 0; n <= Series.ORDER; n++) {
      double sum = far.b()[n] + near.b()[n];
      assertThat(stack.numerator().power(n)[0] / sum).as("power " + n).isCloseTo(1, within(1e-12));
    }
  }
}
