package plyworth.plugins.barrier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.plugins.barrier.pack.BarrierCriteria;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.ValueFunction;

/** Random laminates of the options of the example studies, in columns. */
class ExampleStudiesTest {

  private static final ValueFunction MARGIN =
      BarrierCriteria.all().get(BarrierCriteria.MARGIN).value();

  /** Every so many are scored whole. */
  private static final int STRIDE = 8;

  private static Block finished(Candidates candidates) {
    Block block = candidates.block();
    candidates.layerwise().finish(block);
    return block;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sugar-stick",
        "seasoning-stick",
        "seasoning-stick-by-gram",
        "freeze-dried-snack",
        "isopropanol-wipe"
      })
  void marginIsKnownToAFiftiethOfItsValue(String study) {
    Candidates candidates = Candidates.of(study);
    Block block = finished(candidates);
    for (int i = 0; i < block.size; i++) {
      double low = MARGIN.value(block.low[BarrierCriteria.MARGIN][i]);
      double high = MARGIN.value(block.high[BarrierCriteria.MARGIN][i]);
      assertThat(high - low).as(candidates.structures().get(i).toString()).isBetween(0.0, 0.02);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"seasoning-stick", "freeze-dried-snack", "isopropanol-wipe"})
  void columnsEncloseTheWholeScore(String study) {
    Candidates candidates = Candidates.of(study);
    Block block = finished(candidates);
    for (int i = 0; i < block.size; i += STRIDE) {
      var outcomes = candidates.scorer().score(candidates.structures().get(i), Map.of()).outcomes();
      String structure = candidates.structures().get(i).toString();
      for (int c = 0; c < BarrierCriteria.all().size(); c++) {
        if (outcomes.get(BarrierCriteria.all().get(c).id()) instanceof Outcome.Scored scored) {
          double rounding = 1e-9 * Math.abs(scored.figure());
          assertThat(scored.figure())
              .as(structure)
              .isBetween(block.low[c][i] - rounding, block.high[c][i] + rounding);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"seasoning-stick", "freeze-dried-snack", "isopropanol-wipe"})
  void fewAreLeftUndecided(String study) {
    Block block = finished(Candidates.of(study));
    int undecided = 0;
    for (int i = 0; i < block.size; i++) {
      undecided += block.undecided[i] ? 1 : 0;
    }
    assertThat(undecided).isLessThan(block.size / 100);
  }
}
