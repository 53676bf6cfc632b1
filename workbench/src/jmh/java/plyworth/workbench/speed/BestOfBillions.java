package plyworth.workbench.speed;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Search;
import plyworth.workbench.engine.search.SearchEffort;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.ExactScores;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.SearchRanker;
import plyworth.workbench.ranking.ValueModel;

/** The best hundred of more candidates than any table holds, under twenty weightings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx6g")
@Warmup(iterations = 1)
@Measurement(iterations = 20)
public class BestOfBillions {

  private static final int BEST = 100;
  private static final int WEIGHTINGS = 20;
  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private static final double MEBIBYTE = 1024.0 * 1024.0;

  /**
   * Further amounts of each layer put down by a machine: 1 gives 2·10^8 candidates, 10 give 10^11.
   */
  @Param("1")
  public int steps;

  private final List<ValueModel> models = new ArrayList<>();
  private final List<ValueModel> stepped = new ArrayList<>();
  private final List<Double> processor = new ArrayList<>();
  private final List<SearchEffort> efforts = new ArrayList<>();
  private Example example;
  private ExactScores exact;
  private SearchRanker kept;
  private int next;

  /** Derives the study and gets ready to search. */
  @Setup
  public void prepare() {
    example = Example.of("seasoning-stick-by-gram", study -> FineAmounts.of(study, steps));
    exact = Ranked.of(example.compiled(), BEST, Optional.of(Search.BOUNDED), Progress.NONE).exact();
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < WEIGHTINGS; i++) {
      Weighting weighting = example.moved(random);
      models.add(model(weighting));
      stepped.add(model(oneStepFrom(weighting, i)));
    }
    kept = ranker();
    System.out.printf(Locale.ROOT, "%n%,d candidates%n", example.compiled().paths().count());
  }

  private ValueModel model(Weighting weighting) {
    return ValueModel.of(
        example.compiled().prepared().bound().criteria(), example.study(), weighting);
  }

  /** One weight, another one each time, five hundredths of all weight heavier. */
  private static Weighting oneStepFrom(Weighting weighting, int turn) {
    List<String> criteria = weighting.weights().keySet().stream().sorted().toList();
    double all = weighting.weights().values().stream().mapToDouble(w -> w).sum();
    String heavier = criteria.get(turn % criteria.size());
    Map<String, Double> weights = new TreeMap<>(weighting.weights());
    weights.merge(heavier, 0.05 * all, Double::sum);
    return new Weighting(weighting.name(), weights);
  }

  private SearchRanker ranker() {
    return new SearchRanker(example.tabulation(), exact, Progress.NONE);
  }

  /** Keeps nothing from another search. */
  @Benchmark
  public Ranking cold() {
    return counted(() -> ranker().refine(models.get(next++ % WEIGHTINGS), BEST));
  }

  /** Answers a weighting and then the same after one step; the step is what is reported. */
  @Benchmark
  public Ranking answerThenStep() {
    int at = next++ % WEIGHTINGS;
    kept.refine(models.get(at), BEST);
    return counted(() -> kept.refine(stepped.get(at), BEST));
  }

  private Ranking counted(Supplier<Ranking> search) {
    long before = SYSTEM.getProcessCpuTime();
    Ranking ranking = search.get();
    processor.add((SYSTEM.getProcessCpuTime() - before) * 1e-6);
    efforts.add(ranking.search().orElseThrow());
    return ranking;
  }

  /**
   * Prints what the last twenty searches took: the processor time of the whole process, compiler
   * and collector included, and of the search alone the time that passed.
   */
  @TearDown
  public void print() {
    print("processor ms", processor.stream());
    print("ms", effort -> effort.seconds() * 1000);
    print("pops", SearchEffort::popped);
    print("pushes", SearchEffort::pushed);
    print("regions bounded", SearchEffort::bounded);
    print("candidates scored", SearchEffort::scored);
    print("queue MiB", effort -> effort.queueBytes() / MEBIBYTE);
  }

  private void print(String what, ToDoubleFunction<SearchEffort> figure) {
    print(what, efforts.stream().map(figure::applyAsDouble));
  }

  private void print(String what, Stream<Double> all) {
    double[] sorted =
        all.skip(Math.max(0, efforts.size() - WEIGHTINGS)).mapToDouble(d -> d).sorted().toArray();
    System.out.printf(
        Locale.ROOT,
        "%-18s least %,12.1f  median %,12.1f  greatest %,12.1f%n",
        what,
        Arrays.stream(sorted).min().orElse(Double.NaN),
        sorted[sorted.length / 2],
        Arrays.stream(sorted).max().orElse(Double.NaN));
  }
}
