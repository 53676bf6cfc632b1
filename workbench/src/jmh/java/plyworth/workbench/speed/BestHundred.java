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
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.SearchRanker;
import plyworth.workbench.ranking.ValueModel;

/** The best hundred once weights have moved, by several ways in one run; each on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx6g")
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 5, time = 5)
public class BestHundred {

  private static final int BEST = 100;
  private static final int MOVES = 64;

  /** Name of the study: 1.9 and 21.5 million candidates. */
  @Param({"seasoning-stick", "seasoning-stick-by-gram"})
  public String study;

  private final List<Weighting> weightings = new ArrayList<>();
  private final List<ValueModel> models = new ArrayList<>();
  private int move;
  private Ranked ranked;
  private CandidateTable table;
  private SearchRanker search;

  /** Scores and ranks the study once. */
  @Setup
  public void prepare() {
    Example example = Example.of(study);
    ranked = Ranked.of(Scored.of(example.compiled(), Progress.NONE), BEST);
    table = ranked.scored().table();
    search = new SearchRanker(example.tabulation(), ranked.exact(), Progress.NONE);
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < MOVES; i++) {
      weightings.add(example.moved(random));
      models.add(ValueModel.of(table.criteria(), example.study(), weightings.get(i)));
    }
  }

  private int next() {
    move = (move + 1) % MOVES;
    return move;
  }

  /** The table ranked again. */
  @Benchmark
  public Ranking rankAgain() {
    return ranked.ranker().refine(models.get(next()), BEST);
  }

  /** What a moved slider waits for: the table ranked again, the best and today's pack in full. */
  @Benchmark
  public Ranked answer() {
    return ranked.again(ranked.study().with(weightings.get(next())), BEST);
  }

  /** The search, which keeps nothing from the last time. */
  @Benchmark
  public Ranking search() {
    return search.refine(models.get(next()), BEST);
  }

  /** The same columns summed up row by row, for comparison: what merely reading them costs. */
  @Benchmark
  public double readAll() {
    return PlainScan.largestSum(table);
  }
}
