package plyworth.plugins.barrier.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

class LaminateTest {

  /** A dry product in a damp climate, 23 °C. */
  private static final Brief DRY =
      Bench.brief(
          Bench.product(
              100, new MoistureLimit(new Isotherm.Linear(0.1), 100, 0.1, 0.3), null, null),
          Bench.sachet(100, 150, 10),
          23,
          80,
          365);

  private static Laminate laminate(String notation) {
    Structure structure = LayerNotation.readStructure(notation);
    BarrierModel model = BarrierModel.of(Bench.context(DRY));
    return new FormedPack(model, structure).laminate(model.climate().season(), 0.3);
  }

  private static double oxygen(String notation) {
    return laminate(notation).resistance(Permeant.OXYGEN);
  }

  /** TAPPI 18IFP28, abstract: the middle of a symmetrical laminate sees the mean humidity. */
  @Test
  void evohInTheMiddleOfEqualSkinsSeesTheMeanOfOutsideAndInside() {
    double[] faces = laminate("ldpe 40 um / evoh-32 2 um / ldpe 40 um").profile().faces();
    assertThat((faces[1] + faces[2]) / 2).isCloseTo(0.55, withPercentage(0.5));
  }

  /** TAPPI 18IFP28, abstract: asymmetry shifts it; a tighter skin on the damp side helps. */
  @Test
  void evohHoldsOxygenBackBetterBehindATightSkinOnTheDampSide() {
    double dry = oxygen("bopp 30 um / evoh-32 3 um / ldpe 20 um");
    double damp = oxygen("ldpe 20 um / evoh-32 3 um / bopp 30 um");
    assertThat(dry).isGreaterThan(1.5 * damp);
  }

  @Test
  void withoutLayersThatFollowHumidityTheOrderDoesNotMatter() {
    double there = oxygen("bopet 12 um / ldpe 40 um");
    assertThat(oxygen("ldpe 40 um / bopet 12 um")).isCloseTo(there, withPercentage(1e-9));
  }

  @Test
  void waterThroughPaperIsEasierOnTheDampSide() {
    double outside = laminate("kraft-paper 60 g/m2 / ldpe 20 um").profile().resistance(0);
    double inside = laminate("ldpe 20 um / kraft-paper 60 g/m2").profile().resistance(1);
    assertThat(outside).isLessThan(inside);
  }
}
