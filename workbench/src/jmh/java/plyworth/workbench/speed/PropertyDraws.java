package plyworth.workbench.speed;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import plyworth.shared.scoring.Draw;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Search;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.robustness.Acceptability;
import plyworth.workbench.robustness.Doubt;

/**
 * Chances of a thousand candidates of an example study while weights and inputs are uncertain
 * together, on all cores, from the choice of the candidates to their confidences; and one of the
 * draws with each of them scored in full, on one core.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 2)
@Measurement(iterations = 5)
public class PropertyDraws {

  private static final int CANDIDATES = 1000;

  /** Name of the study. */
  @Param({"seasoning-stick", "sugar-stick", "isopropanol-wipe"})
  public String study;

  /** Number of draws; there is no precision at which they end before. */
  @Param("10000")
  public int draws;

  private Ranked ranked;
  private List<Structure> best;
  private long seed;

  /** Ranks the study. */
  @Setup
  public void prepare() {
    ranked =
        Ranked.of(
            Example.of(study).compiled(), CANDIDATES, Optional.of(Search.TABLE), Progress.NONE);
    best = ranked.best().stream().map(c -> ranked.structure(c.path())).toList();
  }

  /** All draws, each world scored by layers. */
  @Benchmark
  public Acceptability byLayers() {
    Acceptability.Plan plan = new Acceptability.Plan(Doubt.AROUND, draws, 0, ++seed);
    return Acceptability.of(ranked, List.of(), plan);
  }

  /** One world, every structure scored in full. */
  @Benchmark
  public double oneDrawInFull() {
    Prepared prepared = ranked.scored().compiled().prepared();
    BoundPlugins bound =
        BoundPlugins.bind(prepared.catalog(), prepared.study(), Draw.random(++seed));
    return best.stream().mapToDouble(s -> bound.figures(bound.score(s))[0]).sum();
  }
}
