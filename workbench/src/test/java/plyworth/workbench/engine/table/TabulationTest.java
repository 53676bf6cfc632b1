package plyworth.workbench.engine.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.Join;
import plyworth.shared.structure.Layer;
import plyworth.workbench.Oracle;
import plyworth.workbench.ToyGraph;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;

class TabulationTest {

  private static final double STEP = 3e-7;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void everyFigureAndBlockIsThatOfTheWholeStructure(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    CandidateTable table = Tabulation.of(study.graph(), study.plugins()).run(Progress.NONE, 2);
    assertThat(table.complete()).isTrue();
    assertThat(table.rows()).isEqualTo(study.scored().size());
    for (Oracle.Scored scored : study.scored()) {
      assertRow(table, scored, study.figures(scored.path()));
    }
  }

  private static void assertRow(CandidateTable table, Oracle.Scored scored, double[] figures) {
    Chunk chunk = table.chunkOf(scored.path());
    int row = CandidateTable.rowOf(scored.path());
    boolean unknown = false;
    for (int c = 0; c < figures.length; c++) {
      if (table.criteria().get(c).applies()) {
        unknown |= Double.isNaN(figures[c]);
        if (!scored.blocked() || !Float.isNaN(chunk.low(c)[row])) {
          assertEnds(chunk.low(c)[row], chunk.high(c)[row], figures[c]);
        }
      }
    }
    byte code = scored.blocked() ? Chunk.BLOCKED : unknown ? Chunk.UNKNOWN : Chunk.SCORED;
    assertThat(chunk.codes()[row]).isEqualTo(code);
  }

  private static void assertEnds(float low, float high, double figure) {
    double slack = STEP * Math.abs(figure);
    boolean encloses =
        Double.isNaN(figure)
            ? Float.isNaN(low) && Float.isNaN(high)
            : low <= figure + slack && high >= figure - slack;
    assertThat(encloses).describedAs("%s in %s to %s", figure, low, high).isTrue();
  }

  @Test
  void aCriterionThatNobodyWantsTakesNoColumnAndNoMemory() {
    ToyStudy study = ToyStudy.random(4);
    List<BoundCriterion> criteria = study.plugins().criteria();
    BoundCriterion wanted =
        criteria.stream().filter(BoundCriterion::applies).findFirst().orElseThrow();
    Tabulation narrow =
        Tabulation.of(study.graph(), study.plugins(), wanted::equals, Long.MAX_VALUE / 4);
    CandidateTable table = narrow.run(Progress.NONE, 2);
    CandidateTable whole = Tabulation.of(study.graph(), study.plugins()).run(Progress.NONE, 2);
    for (int c = 0; c < criteria.size(); c++) {
      assertThat(table.chunk(0).has(c)).isEqualTo(criteria.get(c).equals(wanted));
    }
    int column = criteria.indexOf(wanted);
    assertThat(table.chunk(0).low(column)).isEqualTo(whole.chunk(0).low(column));
    assertThat(narrow.size().columns()).isEqualTo(1);
  }

  @Test
  void chunksThatBeginInTheMiddleOfACompletionCarryOn() {
    ToyStudy study = big();
    CandidateTable table = Tabulation.of(study.graph(), study.plugins()).run(Progress.NONE, 2);
    assertThat(table.chunks()).isGreaterThan(2);
    for (Oracle.Scored scored : study.scored()) {
      assertRow(table, scored, study.figures(scored.path()));
    }
  }

  private static ToyStudy big() {
    return ToyStudy.of(
        ToyGraph.full(5, 9),
        List.of(new ToyPlugin("a", List.of(Join.SUM), List.of(), List.of(), true, true).bound()));
  }

  @Test
  void zonesHoldTheSmallestAndLargestFigureThatIsNotBlocked() {
    ToyStudy study = big();
    Chunk chunk = Tabulation.of(study.graph(), study.plugins()).run(Progress.NONE, 1).chunk(1);
    Zones zones = chunk.zones();
    for (int z = 0; z < zones.count(); z++) {
      float least = Float.POSITIVE_INFINITY;
      float most = Float.NEGATIVE_INFINITY;
      int blocked = 0;
      for (int row = z * Chunk.ZONE; row < Math.min(chunk.size(), (z + 1) * Chunk.ZONE); row++) {
        boolean out = chunk.codes()[row] == Chunk.BLOCKED;
        blocked += out ? 1 : 0;
        least = out ? least : Math.min(least, chunk.low(0)[row]);
        most = out ? most : Math.max(most, chunk.high(0)[row]);
      }
      assertThat(zones.lowest(0)[z]).isEqualTo(least);
      assertThat(zones.highest(0)[z]).isEqualTo(most);
      assertThat(zones.blocked()[z]).isEqualTo(blocked);
    }
  }

  @Test
  void cancellingKeepsTheFirstCandidatesAndSaysThatTheTableIsPartial() {
    ToyStudy study = big();
    StopAfter progress = new StopAfter(Chunk.ROWS);
    CandidateTable table = Tabulation.of(study.graph(), study.plugins()).run(progress, 1);
    assertThat(table.complete()).isFalse();
    assertThat(table.rows()).isEqualTo(Chunk.ROWS);
    assertThat(table.total()).isEqualTo(study.scored().size());
    assertRow(table, study.scored().get(77), study.figures(77));
  }

  private static final class StopAfter implements Progress {
    private final long enough;
    private volatile long scored;

    StopAfter(long enough) {
      this.enough = enough;
    }

    @Override
    public void scored(long candidates, long of) {
      assertThat(candidates).isGreaterThan(scored).isLessThanOrEqualTo(of);
      scored = candidates;
    }

    @Override
    public boolean cancelled() {
      return scored >= enough;
    }
  }

  @Test
  void aTableThatDoesNotFitIsRefusedBeforeAnythingIsScored() {
    ToyStudy study = big();
    Tabulation tabulation = Tabulation.of(study.graph(), study.plugins(), c -> true, 100_000);
    assertThat(tabulation.size().fits()).isFalse();
    assertThatThrownBy(() -> tabulation.run(Progress.NONE))
        .isInstanceOf(TableTooLargeException.class)
        .hasMessageContaining("59,049 candidates with 1 criteria")
        .hasMessageContaining("Offer fewer options")
        .hasMessageContaining("-Xmx");
  }

  @Test
  void theStatedSizeGrowsWithTheCriteriaThatAreOnlyBounded() {
    CompiledGraph graph = ToyGraph.full(4, 8).graph();
    ToyPlugin plugin = new ToyPlugin("a", List.of(Join.SUM), List.of(), List.of(), true, false);
    TableSize exact = Tabulation.of(graph, ToyStudy.bound(List.of(plugin.bound()))).size();
    plugin.apart(1);
    TableSize bounded = Tabulation.of(graph, ToyStudy.bound(List.of(plugin.bound()))).size();
    assertThat(exact.bounded()).isZero();
    assertThat(bounded.bounded()).isEqualTo(1);
    assertThat(bounded.bytes() - exact.bytes()).isEqualTo(4L * graph.count());
  }

  @Test
  void aGraphWithoutCandidatesGivesAnEmptyTable() {
    BoundPlugins plugins = big().plugins();
    CandidateTable table = Tabulation.of(CompiledGraph.empty(), plugins).run(Progress.NONE);
    assertThat(table.rows()).isZero();
    assertThat(table.complete()).isTrue();
  }

  @Test
  void aPluginThatThrowsIsNamed() {
    ToyPlugin thrower =
        new ToyPlugin("thrower", List.of(Join.SUM), List.of(), List.of(), true, false) {
          @Override
          public void finish(Block block) {
            throw new IllegalStateException("out of order");
          }
        };
    assertFault(thrower, "out of order");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aPluginThatDoesNotAnswerIsNamedAndLeftBehind(boolean alreadyWithALayer) {
    CountDownLatch never = new CountDownLatch(1);
    ToyPlugin silent =
        new ToyPlugin("silent", List.of(Join.SUM), List.of(), List.of(), true, false) {
          @Override
          public void contribute(Layer layer, Layer outer, double[] state) {
            if (alreadyWithALayer) {
              sleep(never);
            }
          }

          @Override
          public void finish(Block block) {
            sleep(never);
          }
        };
    BoundPlugins plugins = ToyStudy.bound(List.of(silent.bound()));
    assertThatThrownBy(
            () ->
                Tabulation.of(
                    ToyGraph.full(3, 3).graph(),
                    plugins,
                    c -> true,
                    Long.MAX_VALUE / 4,
                    Duration.ofMillis(100)))
        .isInstanceOfSatisfying(
            ScoringFault.class, fault -> assertThat(fault.pluginId()).isEqualTo("silent"))
        .hasMessageContaining("not answered");
    never.countDown();
  }

  private static void sleep(CountDownLatch until) {
    try {
      until.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void aPluginThatGivesInfinityOrBoundsUpsideDownIsNamed() {
    assertFault(giving(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY), "infinite");
    assertFault(giving(2, 1), "upside down");
  }

  @Test
  void aPluginThatForgetsACriterionIsNamed() {
    ToyPlugin forgetful =
        new ToyPlugin("forgetful", List.of(Join.SUM), List.of(), List.of(), false, false) {
          @Override
          public plyworth.shared.scoring.Assessment score(
              plyworth.shared.structure.Structure structure,
              java.util.Map<plyworth.shared.scoring.Figure, Double> needed) {
            return new plyworth.shared.scoring.Assessment(
                java.util.Map.of(), List.of(), java.util.Map.of());
          }
        };
    assertFault(forgetful, "no outcome for c0");
  }

  private static ToyPlugin giving(double low, double high) {
    return new ToyPlugin("giver", List.of(Join.SUM), List.of(), List.of(), true, false) {
      @Override
      public void finish(Block block) {
        java.util.Arrays.fill(block.low[0], low);
        if (low != high) {
          java.util.Arrays.fill(block.apart(0), high);
        }
      }
    };
  }

  private static void assertFault(ToyPlugin plugin, String reason) {
    BoundPlugins plugins = ToyStudy.bound(List.of(plugin.bound()));
    CompiledGraph graph = ToyGraph.full(3, 3).graph();
    assertThatThrownBy(() -> Tabulation.of(graph, plugins).run(Progress.NONE))
        .isInstanceOfSatisfying(
            ScoringFault.class,
            fault -> {
              assertThat(fault.pluginId()).isEqualTo(plugin.card().id());
              assertThat(fault.reason()).contains(reason);
            });
  }
}
