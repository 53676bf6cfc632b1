package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.TodayReview;

/** The bars of a ranked study. */
class RankedBarsTest {

  private static final Ranked RANKED = SmallStudy.ranked(SmallStudy.few());
  private static final RankingBars BARS =
      RankedBars.of(RANKED, BestList.all(RANKED, 5), TodayReview.NONE, 5, Locale.ENGLISH);

  @Test
  void todayStandsFirstThenTheBestInOrder() {
    assertThat(BARS.bars().get(0).name()).startsWith("today");
    assertThat(BARS.bars().subList(1, 6))
        .extracting(RankingBars.Bar::name)
        .containsExactly("1", "2", "3", "4", "5");
    assertThat(BARS.bars().get(1).value())
        .isCloseTo(RANKED.best().get(0).value(), within(1e-9))
        .isGreaterThanOrEqualTo(BARS.bars().get(2).value());
  }

  @Test
  void aLayerIsRepeatedWhenTheBarAboveHasIt() {
    for (int i = 1; i < BARS.bars().size(); i++) {
      List<String> above =
          BARS.bars().get(i - 1).plies().stream().map(RankingBars.Ply::full).toList();
      assertThat(BARS.bars().get(i).plies())
          .allSatisfy(p -> assertThat(p.repeated()).isEqualTo(above.contains(p.full())));
    }
  }

  @Test
  void theThicknessIsThatOfItsLayers() {
    assertThat(BARS.thickest()).isBetween(50.0, 200.0);
    assertThat(BARS.named("1").orElseThrow().gaugeUm()).isPositive();
    assertThat(BARS.named("none")).isEmpty();
  }

  @Test
  void theNoteSaysHowManyAndByWhichWeighting() {
    assertThat(BARS.note())
        .startsWith("The best 5 of ")
        .endsWith("weighting \"tea room\"; not calibrated");
  }

  @Test
  void theBestOfEachKindKeepTheirRankAmongAll() {
    BestList kinds = BestList.kinds(RANKED, 5);
    RankingBars bars = RankedBars.of(RANKED, kinds, TodayReview.NONE, 5, Locale.ENGLISH);
    assertThat(bars.note()).startsWith("The best of each of 5 kinds, of ");
    List<Integer> ranks =
        bars.bars().subList(1, 6).stream().map(bar -> Integer.valueOf(bar.name())).toList();
    assertThat(ranks).isSorted().doesNotHaveDuplicates().startsWith(1);
    assertThat(ranks.get(4)).isGreaterThan(5);
  }
}
