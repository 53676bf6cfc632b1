package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import plyworth.shared.study.Weighting;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.ParetoFront;
import plyworth.workbench.ranking.Valuation;

/** Which candidates come onto the trade-off plot. */
class PlottedTest {

  private static final Ranked RANKED = SmallStudy.ranked(SmallStudy.few());
  private static final BestList KINDS = BestList.kinds(RANKED, 10);

  private static int place(String criterion) {
    return RANKED.ranking().model().indexOf(criterion).orElseThrow();
  }

  private static Plotted plotted(String... criteria) {
    int[] places = java.util.Arrays.stream(criteria).mapToInt(PlottedTest::place).toArray();
    return Plotted.of(RANKED, KINDS, places, new FrontMemory(), () -> false);
  }

  private static double worth(Valuation valuation, String criterion) {
    return valuation.parts().get(place(criterion)).valueLow();
  }

  /** Every ranked candidate, scored in full, against every other. */
  @Test
  void theFrontOfTwoAxesIsThatOfAllCandidatesAndIsShownWhole() {
    String x = "cost/packed-per-1000";
    String y = "machinability/bending-stiffness";
    List<Long> ranked =
        LongStream.range(0, RANKED.scored().table().rows())
            .filter(p -> RANKED.sheet(RANKED.structure(p)).group() == Group.RANKED)
            .boxed()
            .toList();
    List<Valuation> all =
        ranked.stream().map(p -> RANKED.sheet(RANKED.structure(p)).valuation()).toList();
    Set<Long> expected = new HashSet<>();
    for (int i = 0; i < all.size(); i++) {
      double cost = worth(all.get(i), x);
      double stiffness = worth(all.get(i), y);
      boolean beaten =
          all.stream()
              .anyMatch(
                  o ->
                      worth(o, x) >= cost
                          && worth(o, y) >= stiffness
                          && (worth(o, x) > cost || worth(o, y) > stiffness));
      if (!beaten) {
        expected.add(ranked.get(i));
      }
    }
    Plotted plotted = plotted(x, y);
    assertThat(plotted.front().reach()).isEqualTo(Plotted.Reach.ALL);
    assertThat(plotted.front().members()).isEqualTo(expected.size());
    assertThat(
            plotted.candidates().stream()
                .filter(Plotted.Candidate::onFront)
                .map(Plotted.Candidate::path))
        .containsExactlyInAnyOrderElementsOf(expected);
  }

  @Test
  void theBestComeFirstAndEveryOtherIsTheBestOfItsKindOrOnTheFront() {
    Plotted plotted = plotted("cost/packed-per-1000", "barrier/margin");
    Set<Long> kinds = new HashSet<>();
    KINDS.entries().forEach(e -> kinds.add(e.candidate().path()));
    assertThat(plotted.candidates().get(0).rank()).isEqualTo(1);
    assertThat(plotted.candidates())
        .allMatch(c -> c.rank() > 0 || kinds.contains(c.path()) || c.onFront());
    assertThat(plotted.candidates().stream().map(Plotted.Candidate::path)).doesNotHaveDuplicates();
  }

  @Test
  void aCriterionWithoutAColumnLeavesAFrontOfThoseShown() {
    Plotted plotted = plotted("cost/packed-per-1000", "cost/grammage");
    assertThat(plotted.front().reach()).isEqualTo(Plotted.Reach.NO_COLUMN);
    assertThat(plotted.front().members()).isEqualTo(plotted.front().plotted()).isPositive();
  }

  @Test
  void aMovedWeightLeavesTheFrontAsItIs() {
    FrontMemory fronts = new FrontMemory();
    int[] criteria = {place("cost/packed-per-1000"), place("recyclability/class")};
    Optional<ParetoFront> before = fronts.of(RANKED, criteria);
    Weighting other = RANKED.study().weightings().get(1);
    Ranked moved = RANKED.again(RANKED.study().with(other), 50);
    assertThat(fronts.of(moved, criteria)).isSameAs(before);
    assertThat(fronts.of(moved, new int[] {criteria[0]})).isNotSameAs(before);
  }
}
