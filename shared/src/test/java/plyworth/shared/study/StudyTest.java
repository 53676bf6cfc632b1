package plyworth.shared.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.SampleStructures;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;

class StudyTest {

  private static final Structure BASELINE = SampleStructures.usual().get(0);

  private static Study study(List<Weighting> weightings, String active) {
    return new Study(
        "Title",
        "Question?",
        SampleBriefs.sugarStick(),
        List.of(new Position("All", List.of(new Option(BASELINE.layers())))),
        List.of(),
        BASELINE,
        List.of(),
        weightings,
        active,
        Map.of(),
        List.of(),
        Map.of(),
        Study.STANDARD_SEED,
        List.of(),
        List.of(),
        Optional.empty(),
        Results.NONE,
        List.of(),
        Decision.OPEN,
        "");
  }

  private static Weighting weighting(String name, double weight) {
    return new Weighting(name, Map.of("cost/grammage", weight));
  }

  @Test
  void weightingInUseMustBeThere() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> study(List.of(weighting("General", 1)), "general"))
        .withMessageContaining("\"general\", is not among the weightings");
  }

  @Test
  void twoWeightingsCannotShareAName() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> study(List.of(weighting("A", 1), weighting("A", 2)), "A"))
        .withMessageContaining("a weighting stands twice");
  }

  @Test
  void changedWeightingTakesItsOldPlaceAndIsInUse() {
    Study study = study(List.of(weighting("A", 1), weighting("B", 1)), "B");
    Study changed = study.with(weighting("A", 3));
    assertThat(changed.weightings()).extracting(Weighting::name).containsExactly("A", "B");
    assertThat(changed.activeWeighting().weight("cost/grammage")).isEqualTo(3);
    assertThat(study.activeWeighting().name()).isEqualTo("B");
  }

  @Test
  void absentCriterionWeighsNothing() {
    assertThat(weighting("A", 1).weight("barrier/otr")).isZero();
    assertThat(weighting("A", 1).with("barrier/otr", 2).weight("barrier/otr")).isEqualTo(2);
    assertThatIllegalArgumentException().isThrownBy(() -> weighting("A", -1));
    assertThatIllegalArgumentException().isThrownBy(() -> weighting("A", Double.NaN));
  }

  @Test
  void limitAllowsItsOwnFigureAndNeverTheUnknown() {
    Limit most = new Limit("a/b", Limit.Bound.AT_MOST, 5, "");
    Limit least = new Limit("a/b", Limit.Bound.AT_LEAST, 5, "");
    assertThat(List.of(most.allows(5), most.allows(4), least.allows(5), least.allows(6)))
        .containsOnly(true);
    assertThat(List.of(most.allows(6), least.allows(4), most.allows(Double.NaN)))
        .containsOnly(false);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Limit("a/b", Limit.Bound.AT_MOST, Double.NaN, ""));
  }
}
