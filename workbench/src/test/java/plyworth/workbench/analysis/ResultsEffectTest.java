package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.engine.table.Progress;

/** What measuring does to a ranking. */
class ResultsEffectTest {

  /** Kraft paper so dear that other webs lead. */
  private static Study measured() {
    Measurement price = new Measurement("price", 20, "EUR/kg", 1, 1, "an invented offer", "", "");
    Study study = SmallStudy.few();
    return study.with(
        new Results(List.of(new MaterialResult("kraft-paper", Double.NaN, price)), List.of()));
  }

  private static ResultsEffect effect(ResultsEffect.Without without) {
    return ResultsEffect.of(SmallStudy.ranked(measured()), without, Progress.NONE);
  }

  @Test
  void dearPaperLetsGlassineLead() {
    ResultsEffect effect = effect(ResultsEffect.Without.RESULTS);
    assertThat(effect.turnsTheLead()).isTrue();
    ResultsEffect.Move first = effect.moves(3).get(0);
    assertThat(first.structure().toString()).contains("glassine");
    assertThat(first.after()).hasValue(1);
    assertThat(first.before().orElseThrow()).isGreaterThan(1);
  }

  @Test
  void rankingWithoutResultsIsThatOfTheStudyBeforeThem() {
    Ranked before = SmallStudy.ranked(SmallStudy.few());
    assertThat(effect(ResultsEffect.Without.ANYTHING).before().best()).isEqualTo(before.best());
  }

  @Test
  void measurementsLeftOutAloneKeepTheResults() {
    ResultsEffect effect = effect(ResultsEffect.Without.TODAY);
    assertThat(effect.turnsTheLead()).isFalse();
    assertThat(effect.moves(5)).allMatch(move -> move.before().equals(move.after()));
  }
}
