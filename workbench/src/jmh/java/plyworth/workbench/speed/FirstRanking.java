package plyworth.workbench.speed;

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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;

/**
 * From the file of a study to its hundred best in full, in a program that runs: the first time in a
 * process, and again. On all cores.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 3,
    jvmArgsAppend = {"-Xmx6g", "@target/plyworth/bin/java.options"})
@Warmup(iterations = 0)
@Measurement(iterations = 3)
public class FirstRanking {

  private static final int BEST = 100;

  /** Name of the study. */
  @Param({
    "sugar-stick",
    "freeze-dried-snack",
    "isopropanol-wipe",
    "seasoning-stick",
    "seasoning-stick-by-gram"
  })
  public String study;

  private final PluginCatalog plugins = PluginCatalog.load(Example.PLUGINS);

  /** Reads, binds, builds the graph, scores all candidates and ranks them. */
  @Benchmark
  public Ranked opened() {
    Study read = StudyFile.open(Example.file(study)).study();
    Compiled compiled = Compiled.of(Prepared.of(read, plugins), () -> false);
    return Ranked.of(compiled, BEST, Optional.empty(), Progress.NONE);
  }
}
