package plyworth.workbench.robustness.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import plyworth.shared.data.DataException;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.RefusedLine;

class AnswerReviewTest {

  private static final Study STUDY = SmallStudy.few();
  private static final String HEADER =
      "material,property,at,unit,low,typical,high,kind,source,value,spread,samples,method,date,note\n";
  private static final String PRICE = "ldpe,price,,EUR/kg,1,1.4,2,memory,from memory,";

  private static AnswerReview read(Study study, String... lines) {
    String text = HEADER + String.join("\n", lines) + "\n";
    return AnswerReview.read(text, "answers.csv", study, SmallStudy.CATALOG);
  }

  @Test
  void aReadingMovesTheFigureTowardsWhatWasRead() {
    AnswerReview review = read(STUDY, PRICE + "1.8,1.05,1,offer,,", PRICE + ",,,,,");
    assertThat(review.refused()).isEmpty();
    assertThat(review.changes()).hasSize(1);
    AnswerReview.Change change = review.changes().get(0);
    assertThat(change.before().typical()).isLessThan(1.5);
    assertThat(change.after().typical()).isBetween(1.7, 1.8);
    assertThat(review.study().results().materials()).hasSize(1);
  }

  @Test
  void wrongLinesAreRefusedByNumberAndTheOthersAreTaken() {
    AnswerReview review =
        read(
            STUDY,
            PRICE + "dear,1.05,1,offer,,",
            PRICE + "1.8,1.05,1,offer,,",
            PRICE + "2000,1.05,1,offer,,");
    assertThat(review.changes()).hasSize(1);
    assertThat(review.refused().stream().map(RefusedLine::line)).containsExactly(2, 4);
    assertThat(review.refused().get(1).reason()).contains("must lie between 0 and 1000 EUR/kg");
  }

  @Test
  void aReadingThatIsThereAlreadyIsNotCountedTwice() {
    AnswerReview once = read(STUDY, PRICE + "1.8,1.05,1,offer,,");
    AnswerReview twice = read(once.study(), PRICE + "1.8,1.05,1,offer,,");
    assertThat(twice.changes()).isEmpty();
    assertThat(twice.refused().get(0).reason()).contains("holds this reading already");
  }

  @Test
  void aFileThatIsNoListOfQuestionsIsRefused() {
    assertThatThrownBy(() -> AnswerReview.read("a,b\n", "answers.csv", STUDY, SmallStudy.CATALOG))
        .isInstanceOf(DataException.class)
        .hasMessageContaining("answers.csv, line 1");
  }
}
