package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.ranking.ValueModel;

/** Sensitivity of a structure's own figures, scored by the built-in plugins. */
class StructureSensitivityTest {

  private static final Prepared PREPARED = Prepared.of(BrothStudy.study(), BrothStudy.plugins());
  private static final Sensitivity.Plan PLAN = new Sensitivity.Plan(128, 1);

  private static Sensitivity of(OptionalInt criterion) {
    ValueModel model =
        ValueModel.of(
            PREPARED.bound().criteria(), PREPARED.study(), PREPARED.study().activeWeighting());
    return Sensitivity.of(
        PREPARED, model, PREPARED.study().baseline(), criterion, PLAN, Progress.NONE);
  }

  private static Sensitivity of(String criterion) {
    List<String> ids = PREPARED.bound().criteria().stream().map(BoundCriterion::id).toList();
    return of(OptionalInt.of(ids.indexOf(criterion)));
  }

  private static List<String> inputs(Sensitivity sensitivity) {
    return sensitivity.influences().stream().map(i -> i.input().id()).toList();
  }

  private static double drawn(long seed) {
    BoundPlugins bound = BoundPlugins.bind(PREPARED.catalog(), PREPARED.study(), Draw.random(seed));
    Map<String, Assessment> assessments = bound.score(PREPARED.study().baseline());
    return assessments.get("cost").figure("packed-per-1000");
  }

  @Test
  void theFigureSpreadsAsInIndependentRandomDraws() {
    Sensitivity sensitivity = of("cost/packed-per-1000");
    double mean =
        LongStream.range(0, 400)
            .mapToDouble(StructureSensitivityTest::drawn)
            .average()
            .orElseThrow();
    assertThat(sensitivity.mean())
        .isCloseTo(mean, within(4 * sensitivity.deviation() / Math.sqrt(400)));
    assertThat(sensitivity.held()).isEmpty();
    assertThat(sensitivity.unknown()).isZero();
  }

  @Test
  void aPriceMovesTheCostAndIsNotEvenAskedForByTheBarrier() {
    assertThat(inputs(of("cost/packed-per-1000"))).contains("aluminium-foil/price");
    assertThat(inputs(of("barrier/otr"))).isNotEmpty().noneMatch(input -> input.endsWith("/price"));
  }

  @Test
  void thePluginThatProvidesAFigureIsAskedAlongWithTheOneThatNeedsIt() {
    assertThat(PREPARED.catalog().only(Set.of("cost")).plugins())
        .extracting(LoadedPlugin::id)
        .containsExactly("machinability", "cost");
    assertThat(PREPARED.catalog().only(Set.of("machinability")).plugins())
        .extracting(LoadedPlugin::id)
        .containsExactly("machinability");
  }

  @Test
  void theValueDependsOnTheInputsOfEveryCriterionThatCounts() {
    assertThat(inputs(of(OptionalInt.empty())))
        .containsAll(inputs(of("cost/packed-per-1000")))
        .containsAll(inputs(of("barrier/margin")));
  }
}
