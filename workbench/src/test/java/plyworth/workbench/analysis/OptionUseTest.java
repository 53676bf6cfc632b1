package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;

/** Why no candidate uses an option. */
class OptionUseTest {

  private static final int BARRIER = 3;

  @Test
  void anOptionThatIsUsedHasItsCandidatesAndNoObstacle() {
    Study study = SmallStudy.few();
    OptionUse use = OptionUse.of(study, BARRIER, 1);
    long through = Offer.of(study, () -> false).flows().through(BARRIER, 1);
    assertThat(use.candidates().longValueExact()).isEqualTo(through).isPositive();
    assertThat(use.obstacles()).isEmpty();
  }

  @Test
  void anOptionThatIsNotUsedNamesTheRuleThatKeepsItOut() {
    Study study = SmallStudy.few("nothing", "bopet-siox 12 um");
    OptionUse use = OptionUse.of(study, BARRIER, 1);
    assertThat(use.candidates()).isZero();
    assertThat(use.obstacles()).isNotEmpty();
    assertThat(use.obstacles().get(0).candidates()).isPositive();
  }

  @Test
  void whatOneStudyOffersAnotherOfTheSamePositionsOffersToo() {
    Study study = SmallStudy.few();
    Offer offer = Offer.of(study, () -> false);
    assertThat(offer.isOf(SmallStudy.few())).isTrue();
    assertThat(offer.isOf(SmallStudy.few("nothing"))).isFalse();
    assertThat(offer.obstacles()).isEmpty();
  }
}
