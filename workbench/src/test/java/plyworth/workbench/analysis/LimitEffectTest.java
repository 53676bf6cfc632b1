package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plyworth.shared.study.Limit;
import plyworth.workbench.SmallStudy;

/** What a limit does, tried or set, against every candidate looked at alone. */
class LimitEffectTest {

  private static final String COST = "cost/packed-per-1000";
  private static final Limit DEAR = new Limit(COST, Limit.Bound.AT_MOST, 10.5, "");

  private final Ranked ranked = SmallStudy.ranked(SmallStudy.few());

  private static double cost(Ranked ranked, int place) {
    int criterion = ranked.ranking().model().indexOf(COST).orElseThrow();
    return ranked.best().get(place).valuation().parts().get(criterion).low();
  }

  @Test
  void whoDropsOutIsToldWithRankAndFigure() {
    LimitEffect effect = LimitEffect.of(ranked, DEAR, 20);
    List<Integer> dearer =
        IntStream.range(0, 20).filter(i -> cost(ranked, i) > 10.5).mapToObj(i -> i + 1).toList();
    assertThat(effect.listed()).isEqualTo(20);
    assertThat(effect.dropouts()).extracting(LimitEffect.Dropout::rank).isEqualTo(dearer);
    assertThat(effect.dropouts()).extracting(LimitEffect.Dropout::figure).allMatch(f -> f > 10.5);
  }

  @Test
  void asManyDropOutAsAreNoMoreRankedOnceItIsSet() {
    LimitEffect tried = LimitEffect.of(ranked, DEAR, 20);
    Ranked limited = ranked.again(ranked.study().withLimits(List.of(DEAR)), 50);
    long before = ranked.ranking().counts().ranked();
    assertThat(tried.rankedWithout()).isEqualTo(before);
    assertThat(tried.tally().orElseThrow().dropped())
        .isEqualTo(before - limited.ranking().counts().ranked())
        .isPositive();
  }

  @Test
  void aLimitThatIsSetDoesTheSameAsWhenItWasTried() {
    Ranked limited = ranked.again(ranked.study().withLimits(List.of(DEAR)), 50);
    LimitEffect tried = LimitEffect.of(ranked, DEAR, 20);
    LimitEffect set = LimitEffect.of(limited, DEAR, 20);
    assertThat(set.tally()).isEqualTo(tried.tally());
    assertThat(set.dropouts())
        .extracting(LimitEffect.Dropout::rank)
        .isEqualTo(tried.dropouts().stream().map(LimitEffect.Dropout::rank).toList());
  }

  @Test
  void aCriterionWithoutColumnIsToldOfTheBestAlone() {
    Limit light = new Limit("cost/grammage", Limit.Bound.AT_MOST, 60, "");
    LimitEffect effect = LimitEffect.of(ranked, light, 50);
    assertThat(effect.tally()).isEmpty();
    assertThat(effect.dropouts()).isNotEmpty().allMatch(d -> d.figure() > 60);
  }

  @Test
  void oneLimitStandsOnEachSideOfACriterion() {
    Limit least = new Limit(COST, Limit.Bound.AT_LEAST, 1, "");
    Limit tighter = new Limit(COST, Limit.Bound.AT_MOST, 9, "the buyer's ceiling");
    List<Limit> both = LimitEffect.set(List.of(DEAR), least);
    assertThat(both).containsExactly(DEAR, least);
    assertThat(LimitEffect.set(both, tighter)).containsExactly(tighter, least);
    assertThat(LimitEffect.without(both, tighter)).containsExactly(least);
  }
}
