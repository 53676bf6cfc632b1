package plyworth.workbench.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.YenKShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
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
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.SearchRanker;
import plyworth.workbench.ranking.ValueModel;

/** The best hundred by additive criteria, searched, beside the hundred shortest paths. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class ShortestPaths {

  private static final int BEST = 100;
  private static final int MOVES = 16;

  /** Layers of twelve materials: 3·10^6 and 6·10^10 candidates. */
  @Param({"6", "10"})
  public int layers;

  /** By how much the figures of two materials differ at most: any, and a catalogue of near ties. */
  @Param({"1", "0.001"})
  public double spread;

  private final List<ValueModel> models = new ArrayList<>();
  private final List<Graph<String, DefaultWeightedEdge>> graphs = new ArrayList<>();
  private AdditiveStudy study;
  private SearchRanker kept;
  private int move;

  /** Draws weights, and makes sure that both ways find the same. */
  @Setup
  public void prepare() {
    study = new AdditiveStudy(layers, spread);
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < MOVES; i++) {
      double[] weights = AdditiveStudy.weights(random);
      models.add(study.model(weights));
      graphs.add(study.paths(weights));
    }
    kept = ranker();
    Agreement.check(kept.refine(models.get(0), BEST), shortest(graphs.get(0)));
  }

  private SearchRanker ranker() {
    return new SearchRanker(study.tabulation(), study::exact, Progress.NONE);
  }

  private int next() {
    move = (move + 1) % MOVES;
    return move;
  }

  private static List<GraphPath<String, DefaultWeightedEdge>> shortest(
      Graph<String, DefaultWeightedEdge> graph) {
    return new YenKShortestPath<>(graph)
        .getPaths(AdditiveStudy.OUTSIDE, AdditiveStudy.INSIDE, BEST);
  }

  /** The search with nothing known; contributions of the layers are ready. */
  @Benchmark
  public Ranking searchedAnew() {
    return ranker().refine(models.get(next()), BEST);
  }

  /** The search after another under other weights, all of them drawn anew. */
  @Benchmark
  public Ranking searchedAgain() {
    return kept.refine(models.get(next()), BEST);
  }

  /** JGraphT's k shortest loopless paths (Yen 1971); the lengths of the edges are ready. */
  @Benchmark
  public List<GraphPath<String, DefaultWeightedEdge>> shortestPaths() {
    return shortest(graphs.get(next()));
  }
}
