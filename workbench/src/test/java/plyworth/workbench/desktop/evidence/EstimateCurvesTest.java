package plyworth.workbench.desktop.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.LogNormal;
import plyworth.workbench.analysis.ResultsReview;

/** What is believed before and after a reading, as curves. */
class EstimateCurvesTest {

  private static Measurement reading(double value, double spread) {
    return new Measurement("price", value, "EUR/kg", spread, 3, "offers", "", "");
  }

  private static ResultsReview.Moved moved(Range before, Measurement... readings) {
    LogNormal after = LogNormal.of(before);
    for (Measurement reading : readings) {
      after = after.after(LogNormal.reading(reading.value(), reading.spread()));
    }
    return new ResultsReview.Moved(
        "ldpe", "price", "EUR/kg", Double.NaN, before, List.of(readings), after.range());
  }

  private static double peak(Explanation.Series series) {
    return series.x().get(series.y().indexOf(Collections.max(series.y())));
  }

  @Test
  void eachCurvePeaksAtItsTypicalFigureAndTheLastLiesBetween() {
    List<Explanation.Series> series =
        EstimateCurves.of(moved(new Range(1, 1.4, 1.9), reading(1.1, 1.2))).series();
    assertThat(series).hasSize(3);
    assertThat(peak(series.get(0))).isCloseTo(1.4, within(0.02));
    assertThat(peak(series.get(1))).isCloseTo(1.1, within(0.02));
    assertThat(peak(series.get(2))).isBetween(1.1, 1.4);
  }

  @Test
  void certainReadingIsALineUpright() {
    List<Explanation.Series> series =
        EstimateCurves.of(moved(new Range(1, 1.4, 1.9), reading(1.1, 1))).series();
    assertThat(series.get(1).x()).containsExactly(1.1, 1.1);
    assertThat(series.get(1).y()).containsExactly(0.0, 1.0);
  }

  @Test
  void figureThatWasUnknownHasNoCurveBefore() {
    ResultsReview.Moved found =
        new ResultsReview.Moved(
            "ldpe",
            "price",
            "EUR/kg",
            Double.NaN,
            Range.UNKNOWN,
            List.of(reading(1.1, 1.2)),
            LogNormal.reading(1.1, 1.2).range());
    assertThat(EstimateCurves.of(found).series()).hasSize(2);
  }
}
