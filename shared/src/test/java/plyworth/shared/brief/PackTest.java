package plyworth.shared.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** Web that a pack takes, by its make-up. Expected figures: arithmetic on the flat patterns. */
class PackTest {

  @Test
  void aPillowPackTakesTwiceItsWidthAndBothFinLegs() {
    Pack fin = new Pack(Pack.Format.PILLOW, 120, 180, 12, 12, 0);
    assertThat(fin.laneWidthMm()).isEqualTo(264);
    assertThat(fin.filmAreaM2()).isCloseTo(0.04752, withPercentage(0.05));
    assertThat(1 / fin.filmAreaM2()).isCloseTo(21.044, withPercentage(0.05));
  }

  @Test
  void aFoldedSachetIsFoldedAlongItsLength() {
    Pack sachet = new Pack(Pack.Format.SACHET_FOLDED, 60, 80, 8, 0, 0);
    assertThat(sachet.laneWidthMm()).isEqualTo(160);
    assertThat(sachet.repeatMm()).isEqualTo(60);
    assertThat(1 / sachet.filmAreaM2()).isCloseTo(104.17, withPercentage(0.05));
  }

  @Test
  void aFourSideSachetTakesTwoWebs() {
    Pack sachet = new Pack(Pack.Format.SACHET_FOUR_SIDE, 60, 80, 8, 0, 0);
    assertThat(sachet.filmAreaM2()).isCloseTo(2 * 0.060 * 0.080, withPercentage(0.05));
  }

  @Test
  void aStickTakesTwiceItsFlatWidthAndTheLap() {
    Pack stick = new Pack(Pack.Format.STICK, 25, 120, 10, 8, 0);
    assertThat(stick.laneWidthMm()).isEqualTo(58);
    assertThat(stick.repeatMm()).isEqualTo(120);
  }
}
