package plyworth.workbench.speed;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.RankShare;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.ValueModel;

/**
 * The rank acceptability of 100,000 made-up candidates by five criteria under 10,000 weights drawn
 * from all there are, the first ten counted. On all cores.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
public class RankAcceptability {

  private static final int SAMPLES = 10_000;
  private static final int K = 10;

  /**
   * Five layers of ten materials each, or figures that have nothing to do with each other, which is
   * the worst there is.
   */
  @Param({"layers", "independent"})
  public String candidates;

  private ManyCandidates made;
  private CandidateTable table;
  private ValueModel model;
  private double[][] weights;
  private double[][] values;

  /** Fills the table and draws the weights. */
  @Setup
  public void prepare() {
    made = new ManyCandidates(5);
    table = candidates.equals("layers") ? made.table() : made.independent(100_000);
    SplittableRandom random = new SplittableRandom(1);
    model = made.weighing(ManyCandidates.FIRST_FIVE);
    weights = IntStream.range(0, SAMPLES).mapToObj(i -> weights(random)).toArray(double[][]::new);
    values = made.values(table, model);
  }

  private static double[] weights(SplittableRandom random) {
    double[] weights =
        IntStream.range(0, ManyCandidates.CRITERIA)
            .mapToDouble(c -> c < ManyCandidates.FIRST_FIVE ? random.nextExponential() : 0)
            .toArray();
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights).map(w -> w / sum).toArray();
  }

  /** By dividing the weights into cells and looking at what may matter in each; nothing is kept. */
  @Benchmark
  public List<RankShare> byCells() {
    return new Ranker(table, path -> null).rankShares(model, weights, K, Progress.NONE);
  }

  /** By ranking all candidates under every one of the weights, values ready in plain columns. */
  @Benchmark
  public int byRankingAll() {
    return Arrays.stream(weights).parallel().mapToInt(this::firstOfTen).sum();
  }

  private int firstOfTen(double[] weights) {
    double[] sums = new double[values[0].length];
    for (int c = 0; c < values.length; c++) {
      double[] column = values[c];
      double weight = weights[c];
      for (int row = 0; row < sums.length; row++) {
        sums[row] += weight * column[row];
      }
    }
    return BestTen.of(sums)[0];
  }
}
