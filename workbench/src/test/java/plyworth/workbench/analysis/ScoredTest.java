package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.UnscorableBriefException;

class ScoredTest {

  private static Ranked ranked(PluginCatalog catalog) {
    return WithoutFaulty.run(
        catalog,
        working ->
            Ranked.of(
                Scored.of(
                    Compiled.of(Prepared.of(BrothStudy.study(), working), () -> false),
                    Progress.NONE),
                20));
  }

  private static void isLeftOut(FailingPlugin.At at) {
    Ranked with = ranked(FailingPlugin.among(at));
    Ranked without = ranked(BrothStudy.plugins());
    assertThat(with.scored().faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.name()).isEqualTo("failing");
              assertThat(fault.reason()).contains("lost at " + at);
            });
    assertThat(with.scored().table().criteria())
        .extracting(BoundCriterion::id)
        .isEqualTo(without.scored().table().criteria().stream().map(BoundCriterion::id).toList());
    assertThat(with.best()).isEqualTo(without.best());
  }

  @Test
  void aPluginThatFailsInTheTableIsLeftOutAndTheRestScoredAgain() {
    isLeftOut(FailingPlugin.At.FINISH);
  }

  @Test
  void aPluginThatFailsToBindIsLeftOut() {
    isLeftOut(FailingPlugin.At.BIND);
  }

  @Test
  void aPluginThatFailsOnOneStructureIsLeftOut() {
    isLeftOut(FailingPlugin.At.SCORE);
  }

  @Test
  void aBriefThatAPluginCannotScoreIsNoFaultOfThePlugin() {
    assertThatThrownBy(() -> ranked(FailingPlugin.among(FailingPlugin.At.BRIEF)))
        .isInstanceOf(UnscorableBriefException.class)
        .hasMessage(
            "the plugin failing cannot score this brief: no climate like this; choose another");
  }
}
