package plyworth.workbench.desktop.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.Screen;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.robustness.Acceptability;
import plyworth.workbench.robustness.Doubt;

/** What stands on the page to decide on, and in the table of a comparison. */
class ReviewPageTest {

  private static final Ranked RANKED = SmallStudy.ranked(SmallStudy.few());
  private static final Review REVIEW =
      Review.of(RANKED, BestList.kinds(RANKED, 2), TodayReview.NONE);

  @BeforeAll
  static void dress() {
    Screen.dress(Appearance.LIGHT);
  }

  @Test
  void gainsAndLossesAddUpToTheDifferenceOfTheValues() {
    double sum = REVIEW.gains().stream().mapToDouble(Review.Gain::value).sum();
    double own = REVIEW.recommended().sheet().valuation().value();
    assertThat(sum).isCloseTo(own - RANKED.baseline().valuation().value(), within(1e-9));
  }

  @Test
  void theRunnerUpIsOfAnotherKind() {
    Comparison.Column other = REVIEW.runnerUp().orElseThrow();
    assertThat(RANKED.kinds().of(other.sheet().structure()))
        .isNotEqualTo(RANKED.kinds().of(REVIEW.recommended().sheet().structure()));
  }

  @Test
  void thePageSaysThatNobodyDrewUntilSomebodyDid() {
    assertThat(ReviewPage.of(REVIEW, Optional.empty())).contains("not known yet");
    Acceptability drawn =
        Acceptability.of(
            RANKED,
            REVIEW.stability().rivals(),
            new Acceptability.Plan(Doubt.AROUND, 20, 0.2, 1),
            Progress.NONE);
    assertThat(ReviewPage.of(REVIEW, Optional.of(drawn)))
        .contains("comes first in")
        .doesNotContain("not known yet");
  }

  @Test
  void whatHasWeightStandsFirstAndEveryDifferenceIsJudged() {
    Comparison comparison =
        Comparison.of(RANKED, List.of(RANKED.structure(RANKED.best().get(0).path())));
    ChartTable table = comparison.table();
    List<String> criteria = table.rows().stream().map(row -> row.get(0)).toList();
    assertThat(criteria.subList(1, 5)).allMatch(name -> name.contains("weight "));
    assertThat(criteria.subList(5, criteria.size())).noneMatch(name -> name.contains("weight "));
    List<String> cost =
        table.rows().stream()
            .filter(row -> row.get(0).startsWith("Cost per\n1000 good packs"))
            .findFirst()
            .orElseThrow();
    assertThat(cost.get(2)).matches("[0-9.]+\n−[0-9.]+\nbetter");
  }
}
