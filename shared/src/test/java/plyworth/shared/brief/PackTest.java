package plyworth.shared.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.scoring.SampleBriefs;

/** Pack geometry against figures worked by hand from the make-up of each format. */
class PackTest {

  @ParameterizedTest
  @CsvSource({
    "PILLOW,           120, 180, 12, 264, 0.04752, 21.044",
    "SACHET_FOLDED,     60,  80,  0, 160, 0.0096, 104.17",
    "SACHET_FOUR_SIDE,  60,  80,  0, 120, 0.0096, 104.17",
    "STICK,             25, 120,  8,  58, 0.00696, 143.68"
  })
  void webOfOnePack(
      Pack.Format format,
      double width,
      double length,
      double overlap,
      double lane,
      double area,
      double perSquareMetre) {
    Pack pack = new Pack(format, width, length, 8, overlap, 1);
    assertThat(pack.laneWidthMm()).isEqualTo(lane);
    assertThat(pack.filmAreaM2()).isCloseTo(area, within(1e-12));
    assertThat(1 / pack.filmAreaM2()).isCloseTo(perSquareMetre, withinPercentage(0.05));
  }

  /** Trims included: pillow on 1060 mm, six sachet lanes of two webs, eight stick lanes. */
  @ParameterizedTest
  @CsvSource({
    "PILLOW,           120, 180, 12, 1060, 10, 3, 15.723",
    "SACHET_FOUR_SIDE,  60,  80,  0,  740, 10, 6, 101.35",
    "STICK,             25, 120,  8,  476,  6, 8, 140.06"
  })
  void packsPerSquareMetreOfMotherWeb(
      Pack.Format format,
      double width,
      double length,
      double overlap,
      double web,
      double trim,
      int lanes,
      double perSquareMetre) {
    Pack pack = new Pack(format, width, length, 8, overlap, 1);
    Brief sample = SampleBriefs.sugarStick();
    Brief brief =
        new Brief(
            sample.product(),
            sample.climate(),
            sample.shelfLifeDays(),
            pack,
            sample.machine(),
            sample.market(),
            new Order(1e6, 1, 0, web, trim));
    assertThat(brief.lanesAcrossWeb()).isEqualTo(lanes);
    assertThat(brief.layoutEfficiency() / pack.filmAreaM2())
        .isCloseTo(perSquareMetre, withinPercentage(0.05));
  }

  @Test
  void pillowUsesThreeQuartersOfItsMotherWeb() {
    Pack pillow = new Pack(Pack.Format.PILLOW, 120, 180, 8, 12, 1);
    assertThat(3 * pillow.laneWidthMm() / 1060).isCloseTo(0.7472, withinPercentage(0.05));
  }

  /** The sachet of an alcohol pad, 60 × 80 mm: 0.0096 m² of faces, 0.28 m of sealed edge. */
  @Test
  void facesAndSealedEdgeOfAFourSideSachet() {
    Pack sachet = new Pack(Pack.Format.SACHET_FOUR_SIDE, 60, 80, 8, 0, 0);
    assertThat(sachet.faceAreaM2()).isCloseTo(0.0096, within(1e-12));
    assertThat(sachet.sealedEdgeMm()).isEqualTo(280);
  }

  @Test
  void foldedSachetHasOneEdgeFewer() {
    assertThat(new Pack(Pack.Format.SACHET_FOLDED, 60, 80, 8, 0, 0).sealedEdgeMm()).isEqualTo(220);
  }

  @Test
  void whatCannotBeIsRefusedWithItsFigure() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Pack(Pack.Format.STICK, 25, 16, 8, 8, 1))
        .withMessageContaining("no room for the product");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Pack(Pack.Format.STICK, Double.NaN, 120, 8, 8, 1))
        .withMessageContaining("the pack width is NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Pack(Pack.Format.STICK, 25, 120, 8, -1, 1))
        .withMessageContaining("the overlap is -1.0; it must not be below 0.0 mm");
  }
}
