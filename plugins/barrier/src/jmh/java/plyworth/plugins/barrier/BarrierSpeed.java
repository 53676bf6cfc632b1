package plyworth.plugins.barrier;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;

/** One candidate's barrier: as a whole, in columns, and bounded; candidates of example studies. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class BarrierSpeed {

  /** Name of the study. */
  @Param({"sugar-stick", "seasoning-stick", "freeze-dried-snack", "isopropanol-wipe"})
  public String study;

  private Candidates candidates;
  private Candidates counted;
  private Block block;
  private Block countedBlock;
  private BoundsBlock bounds;
  private int next;

  /** Reads the study and joins the states of a block. */
  @Setup(Level.Trial)
  public void prepare() {
    candidates = Candidates.of(study);
    counted = Candidates.counted(study);
    block = candidates.block();
    countedBlock = counted.block();
    bounds = candidates.bounds();
  }

  /** One candidate, all mechanisms. */
  @Benchmark
  public Assessment score() {
    next = (next + 1) % Candidates.COUNT;
    return candidates.scorer().score(candidates.structures().get(next), Map.of());
  }

  /** One candidate of a block of joined states, for what the study counts. */
  @Benchmark
  @OperationsPerInvocation(Candidates.COUNT)
  public Block finish() {
    System.arraycopy(countedBlock.low, 0, countedBlock.high, 0, countedBlock.low.length);
    counted.layerwise().finish(countedBlock);
    return countedBlock;
  }

  /** The same for all criteria. */
  @Benchmark
  @OperationsPerInvocation(Candidates.COUNT)
  public Block finishAll() {
    System.arraycopy(block.low, 0, block.high, 0, block.low.length);
    candidates.layerwise().finish(block);
    return block;
  }

  /** One interval of states. */
  @Benchmark
  @OperationsPerInvocation(Candidates.COUNT)
  public BoundsBlock bound() {
    candidates.layerwise().bound(bounds);
    return bounds;
  }
}
