package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the records of the plugin interface refuse, and how an assessment is put in order. */
class RecordsTest {

  private static Finding finding(Finding.Level level) {
    return new Finding(level, "rule", Text.of("key"), "common practice");
  }

  @Test
  void gravestFindingComesFirst() {
    Assessment assessment =
        new Assessment(
            Map.of("a", new Outcome.Scored(2), "b", new Outcome.DataMissing("ldpe", "price")),
            List.of(finding(Finding.Level.INFORMS), finding(Finding.Level.BLOCKS)),
            Map.of());
    assertThat(assessment.findings().get(0).level()).isEqualTo(Finding.Level.BLOCKS);
    assertThat(assessment.blocked()).isTrue();
    assertThat(assessment.figure("a")).isEqualTo(2);
    assertThat(assessment.figure("b")).isNaN();
  }

  @Test
  void findingWithoutSourceIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Finding(Finding.Level.WARNS, "rule", Text.of("key"), ""));
  }

  @Test
  void scoredFigureIsFinite() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Outcome.Scored(Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Outcome.Scored(Double.POSITIVE_INFINITY));
  }

  @Test
  void textTakesTextsAndNumbersAlone() {
    assertThat(Text.of("key", "a", 1.5, 3).arguments()).containsExactly("a", 1.5, 3);
    assertThatIllegalArgumentException().isThrownBy(() -> Text.of("key", List.of()));
  }

  @Test
  void pluginNeedsAnIdAndACaution() {
    List<Text> cautions = List.of(Text.of("caution"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PluginCard("Barrier", Text.of("t"), "1", cautions));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PluginCard("barrier", Text.of("t"), "1", List.of()));
  }

  @Test
  void standardValueOfAParameterLiesWithinItsBounds() {
    Text text = Text.of("t");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Parameter("p", text, "", 11, 0, 10, text));
    Parameter parameter = new Parameter("p", text, "", 5, 0, 10, text);
    assertThat(List.of(parameter.allows(0), parameter.allows(10))).containsOnly(true);
    assertThat(List.of(parameter.allows(10.1), parameter.allows(Double.NaN))).containsOnly(false);
  }

  @Test
  void rowsOfATableAndPointsOfACurveMustFit() {
    Text text = Text.of("t");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Explanation.Table(text, List.of(text), List.of(List.of()), text));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Explanation.Series(text, List.of(1.0), List.of()));
  }

  @Test
  void upperColumnIsTheLowerOneUntilItIsSetApart() {
    Block block = new Block(1, 0, 2, 0, 4);
    assertThat(block.high[0]).isSameAs(block.low[0]);
    assertThat(block.apart(0)).isSameAs(block.high[0]).isNotSameAs(block.low[0]);
    assertThat(block.apart(0)).isSameAs(block.high[0]);
    assertThat(block.high[1]).isSameAs(block.low[1]);
  }
}
