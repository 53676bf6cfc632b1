package plyworth.workbench.speed;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.AllDirectedPaths;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.ValueModel;

/** The best hundred of all 2,985,984 candidates of six layers, beside what libraries do. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx6g")
@Warmup(iterations = 1, time = 3)
@Measurement(iterations = 3, time = 3)
public class AllCandidates {

  private static final int LAYERS = 6;
  private static final int BEST = 100;
  private static final int MOVES = 16;

  private final List<double[]> weights = new ArrayList<>();
  private final List<ValueModel> models = new ArrayList<>();
  private AdditiveStudy study;
  private Ranker ranker;
  private SqlCandidates sql;
  private int move;

  /** Fills both tables, and makes sure that both find the same. */
  @Setup
  public void prepare() throws SQLException {
    study = new AdditiveStudy(LAYERS, 1);
    ranker = new Ranker(table(), study::exact);
    sql = SqlCandidates.of(study);
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < MOVES; i++) {
      weights.add(AdditiveStudy.weights(random));
      models.add(study.model(weights.get(i)));
      Agreement.check(ranker.refine(models.get(i), BEST), sql.best(weights.get(i), BEST));
    }
  }

  /** Takes the database away. */
  @TearDown
  public void close() throws SQLException {
    sql.close();
  }

  private int next() {
    move = (move + 1) % MOVES;
    return move;
  }

  /** The table filled by a plugin, on all cores. */
  @Benchmark
  public CandidateTable table() {
    return study.tabulation().run(Progress.NONE);
  }

  /** The table ranked again, all weights drawn anew; on one core. */
  @Benchmark
  public Ranking rankedAgain() {
    return ranker.refine(models.get(next()), BEST);
  }

  /** The same columns in an embedded column store, ordered and limited by SQL; on all cores. */
  @Benchmark
  public double[] sql() throws SQLException {
    return sql.best(weights.get(next()), BEST);
  }

  /** All paths by JGraphT, sorted by length; on one core. */
  @Benchmark
  public List<GraphPath<String, DefaultWeightedEdge>> allPaths() {
    Graph<String, DefaultWeightedEdge> graph = study.paths(weights.get(next()));
    List<GraphPath<String, DefaultWeightedEdge>> paths =
        new AllDirectedPaths<>(graph)
            .getAllPaths(AdditiveStudy.OUTSIDE, AdditiveStudy.INSIDE, true, null);
    paths.sort(Comparator.comparingDouble(GraphPath::getWeight));
    return paths.subList(0, BEST);
  }
}
