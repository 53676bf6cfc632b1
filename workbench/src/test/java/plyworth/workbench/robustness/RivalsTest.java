package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Ranked;

/** Who is compared when weights and inputs are drawn. */
class RivalsTest {

  @Test
  void theyAreTheFirstTwoThoseOfEveryWeightingAndThoseThatOvertake() {
    Ranked ranked = SmallStudy.ranked(SmallStudy.few());
    List<WeightInterval> intervals = LeaderStability.of(ranked);
    Stakeholders stakeholders = Stakeholders.of(ranked, 3);
    List<Long> rivals = Rivals.of(ranked, intervals, stakeholders);
    assertThat(rivals).doesNotHaveDuplicates();
    assertThat(rivals.subList(0, 2))
        .containsExactly(ranked.best().get(0).path(), ranked.best().get(1).path());
    assertThat(rivals)
        .containsAll(stakeholders.standings().stream().map(Stakeholders.Standing::path).toList());
    intervals.forEach(
        interval -> {
          interval.lower().overtaker().ifPresent(path -> assertThat(rivals).contains(path));
          interval.upper().overtaker().ifPresent(path -> assertThat(rivals).contains(path));
        });
  }
}
