package plyworth.workbench.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
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
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.ValueModel;

/**
 * The best hundred of many made-up candidates with six weighted criteria once something has
 * changed, never twice to the same within a run; p0.50 and p1.00 are the median and the slowest. On
 * one core.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx6g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class RankAgainAtScale {

  private static final int BEST = 100;
  private static final int MOVES = 2000;
  private static final int PROBED = 1 << 26;

  /** Layers of ten materials: 1, 10 and 100 million candidates. */
  @Param({"6", "7", "8"})
  public int layers;

  private final List<ValueModel> moved = new ArrayList<>();
  private final List<ValueModel> edited = new ArrayList<>();
  private final int[] probed = new int[PROBED];
  private CandidateTable table;
  private Ranker ranker;
  private int move;

  /** Fills the table and ranks it once. */
  @Setup
  public void prepare() {
    ManyCandidates candidates = new ManyCandidates(layers);
    table = candidates.table();
    ranker =
        new Ranker(
            table,
            path -> {
              throw new IllegalStateException("nothing is bounded here");
            });
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < MOVES; i++) {
      moved.add(candidates.moved(random));
      edited.add(candidates.edited(random.nextDouble()));
    }
    ranker.refine(moved.get(0), BEST);
  }

  private int next() {
    move = (move + 1) % MOVES;
    return move;
  }

  /** All weights drawn anew: the farthest that sliders can go. */
  @Benchmark
  public Ranking weightsMoved() {
    return ranker.refine(moved.get(next()), BEST);
  }

  /** The value function of one criterion edited. */
  @Benchmark
  public Ranking functionEdited() {
    return ranker.refine(edited.get(next()), BEST);
  }

  /** The same columns summed up row by row. */
  @Benchmark
  public double plainScan() {
    return PlainScan.largestSum(table);
  }

  /** What memory gives: 256 MiB read by the simplest loop there is. */
  @Benchmark
  public int read256Mebibytes() {
    int sum = 0;
    for (int i = 0; i < PROBED; i++) {
      sum += probed[i];
    }
    return sum;
  }
}
