package plyworth.workbench.speed;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
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

/** Candidates scored into a table by all plugins, on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 5, time = 5)
public class Enumeration {

  /** Name of the study. */
  @Param({"sugar-stick", "freeze-dried-snack", "isopropanol-wipe", "seasoning-stick"})
  public String study;

  private Example example;

  /** Candidates per second, beside tables per second. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.OPERATIONS)
  public static class Counter {
    /** Candidates scored. */
    public long candidates;
  }

  /** Reads the study. */
  @Setup
  public void prepare() {
    example = Example.of(study);
  }

  /** All candidates. */
  @Benchmark
  public CandidateTable table(Counter counter) {
    CandidateTable table = example.tabulation().run(Progress.NONE, 1);
    counter.candidates += table.rows();
    return table;
  }
}
