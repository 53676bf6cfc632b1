package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.PluginSettings;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;

/** Measurements of today's pack beside what is predicted of it. */
class TodayReviewTest {

  private static final Study STUDY =
      StudyFile.open(Path.of("..", "studies", "isopropanol-wipe.study.json")).study();

  private static Measurement measured(String figure, double value, String unit) {
    return new Measurement(figure, value, unit, 1.1, 5, "storage trial", "2026-03-12", "");
  }

  private static TodayReview review(Measurement... measurements) {
    Study study = STUDY.withMeasurements(List.of(measurements));
    return TodayReview.of(Prepared.of(study, SmallStudy.CATALOG));
  }

  @Test
  void fieldLifeCorrectsWhatAllPacksShareAndIsThenPredictedAsMeasured() {
    TodayReview.Line line = review(measured("barrier/shelf-life", 900, "days")).lines().get(0);
    assertThat(line.predicted()).isGreaterThan(1000);
    assertThat(line.ratio()).isEqualTo(900 / line.predicted());
    assertThat(line.calibrated()).isCloseTo(900, within(0.01));
    assertThat(line.corrects()).contains("barrier/shelf-life", "barrier/margin");
  }

  @Test
  void measurementThatMeetsThePredictionCorrectsAllTheSame() {
    double predicted = review(measured("barrier/volatile-loss", 1, "%")).lines().get(0).predicted();
    TodayReview review = review(measured("barrier/volatile-loss", predicted, "%"));
    assertThat(review.calibrated()).contains("barrier/volatile-loss");
  }

  @Test
  void priceIsComparedAndCorrectsNothing() {
    TodayReview review = review(measured("cost/price-per-1000", 12, "EUR"));
    assertThat(review.lines().get(0).predicted()).isPositive();
    assertThat(review.calibrated()).isEmpty();
    assertThat(review.correcting()).isEmpty();
  }

  @Test
  void figureFarFromItsPredictionAsksForARemark() {
    double predicted =
        review(measured("barrier/shelf-life", 900, "days")).lines().get(0).predicted();
    assertThat(review(measured("barrier/shelf-life", 4 * predicted, "days")).lines().get(0))
        .matches(TodayReview.Line::wantsNote);
    assertThat(review(measured("barrier/shelf-life", 2 * predicted, "days")).lines().get(0))
        .matches(line -> !line.wantsNote());
  }

  @Test
  void nothingIsPredictedOfAPluginThatIsLeftOut() {
    Study study =
        PluginSettings.use(STUDY, "cost", false)
            .withMeasurements(List.of(measured("cost/price-per-1000", 12, "EUR")));
    TodayReview review = TodayReview.of(Prepared.of(study, SmallStudy.CATALOG));
    assertThat(review.lines().get(0).criterion()).isEmpty();
    assertThat(review.lines().get(0).predicted()).isNaN();
  }

  @Test
  void rankingGoesOnWithoutAPluginThatTheStudyLeavesOut() {
    Ranked ranked = SmallStudy.ranked(PluginSettings.use(SmallStudy.few(), "cost", false));
    assertThat(ranked.ranking().model().criteria())
        .noneMatch(weighed -> weighed.criterion().id().startsWith("cost/"));
    assertThat(ranked.best()).isNotEmpty();
    assertThat(References.check(ranked.study(), SmallStudy.CATALOG, Set.of())).isEmpty();
  }
}
