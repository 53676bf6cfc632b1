package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.host.BoundCriterion;

class ValueModelTest {

  private static final List<BoundCriterion> CRITERIA =
      ToyStudy.bound(
              List.of(
                  new ToyPlugin(
                          "a",
                          List.of(Join.SUM, Join.SUM, Join.SUM),
                          List.of(),
                          List.of(),
                          true,
                          true)
                      .notApplicable(1)
                      .bound()))
          .criteria();

  private static ValueModel model(Map<String, Double> weights, Limit... limits) {
    return ValueModel.of(CRITERIA, new Weighting("w", weights), Map.of(), List.of(limits));
  }

  @Test
  void theWeightOfWhatDoesNotApplyIsSharedOutInProportionAndStaysVisible() {
    ValueModel model = model(Map.of("a/c0", 3.0, "a/c1", 4.0, "a/c2", 1.0));
    assertThat(model.criteria()).extracting(Weighed::asked).containsExactly(0.375, 0.5, 0.125);
    assertThat(model.criteria()).extracting(Weighed::weight).containsExactly(0.75, 0.0, 0.25);
    assertThat(model.sharedOut()).isEqualTo(0.5);
  }

  @Test
  void theWeightOfACriterionThatNoPluginOffersIsSharedOutAndNamed() {
    ValueModel model = model(Map.of("a/c0", 1.0, "gone/x", 3.0));
    assertThat(model.lost()).containsExactly(Map.entry("gone/x", 0.75));
    assertThat(model.criteria().get(0).weight()).isEqualTo(1);
    assertThat(model.sharedOut()).isEqualTo(0.75);
  }

  @Test
  void limitsOnWhatDoesNotApplyAreNamedAndNotChecked() {
    Limit moot = new Limit("a/c1", Limit.Bound.AT_MOST, 0, "");
    Limit gone = new Limit("gone/x", Limit.Bound.AT_MOST, 0, "");
    Limit real = new Limit("a/c0", Limit.Bound.AT_MOST, 2, "");
    ValueModel model = model(Map.of(), moot, gone, real);
    assertThat(model.limits()).containsExactly(real);
    assertThat(model.moot()).containsExactly(moot, gone);
  }

  @Test
  void theUnknownIsRankedAtItsWorstAndShownAtBoth() {
    ValueModel model = model(Map.of("a/c0", 1.0, "a/c2", 1.0));
    Valuation valuation = model.value(new double[] {3, Double.NaN, Double.NaN});
    assertThat(valuation.value()).isEqualTo(0.5);
    assertThat(valuation.valueHigh()).isEqualTo(1);
    assertThat(valuation.parts().get(2).known()).isFalse();
  }

  @Test
  void aBrokenLimitExcludesEvenWhereAnotherCannotBeJudged() {
    Limit first = new Limit("a/c0", Limit.Bound.AT_MOST, 2, "");
    Limit second = new Limit("a/c2", Limit.Bound.AT_LEAST, 2, "");
    ValueModel model = model(Map.of(), first, second);
    double unknown = Double.NaN;
    assertThat(model.group(new double[] {2, unknown, 2}, false)).isEqualTo(Group.RANKED);
    assertThat(model.group(new double[] {unknown, unknown, 2}, false))
        .isEqualTo(Group.CANNOT_BE_JUDGED);
    assertThat(model.group(new double[] {unknown, unknown, 1}, false)).isEqualTo(Group.EXCLUDED);
    assertThat(model.group(new double[] {unknown, unknown, 1}, true)).isEqualTo(Group.BLOCKED);
  }

  @Test
  void theStudysValueFunctionStandsInPlaceOfThePlugins() {
    ValueFunction other = ValueFunction.linear(0, 0, 10, 1);
    ValueModel model =
        ValueModel.of(
            CRITERIA, new Weighting("w", Map.of("a/c0", 2.0)), Map.of("a/c0", other), List.of());
    assertThat(model.value(new double[] {4, 0, 0}).value()).isEqualTo(0.4);
  }

  @Test
  void curvesInFlatArraysGiveTheValuesOfTheirFunctions() {
    Random random = new Random(3);
    for (ValueFunction function :
        List.of(
            ValueFunction.linear(-2, 0, 3, 1, 9, 0.25),
            ValueFunction.logarithmic(0.1, 1, 0.3, 0.7, 40, 0.1))) {
      ValueCurve curve = new ValueCurve(function);
      for (int i = 0; i < 1000; i++) {
        double a = random.nextDouble() * 50 - 4;
        double b = a + random.nextDouble() * 20;
        double[] between = function.valueBetween(a, b);
        assertThat(curve.value(a)).isCloseTo(function.value(a), within(1e-15));
        assertThat(curve.lowest(a, b)).isCloseTo(between[0], within(1e-15));
        assertThat(curve.highest(a, b)).isCloseTo(between[1], within(1e-15));
      }
    }
  }
}
