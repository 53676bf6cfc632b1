package plyworth.workbench.speed;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.ValueModel;

/**
 * Prints the processor time that ranking {@link ManyCandidates} again takes, which other work on
 * the machine lengthens less than the time that passes: what {@link RankAgainAtScale} measures,
 * where there is no machine to spare.
 */
public final class RankAgainTimes {

  private static final String INDEPENDENT = "independent";
  private static final int BEST = 100;
  private static final int WARM_UP = 300;
  private static final int MOVES = 300;
  private static final int SCANS = 9;
  private static final int PROBED = 1 << 26;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private RankAgainTimes() {}

  /**
   * Measures tables of as many layers of ten materials as each argument says; with {@code
   * independent} behind the number, as many candidates whose figures are drawn each for itself.
   */
  public static void main(String... layers) {
    for (String each : layers) {
      measure(Integer.parseInt(each.replace(INDEPENDENT, "")), each.endsWith(INDEPENDENT));
    }
  }

  private static void measure(int layers, boolean independent) {
    ManyCandidates candidates = new ManyCandidates(layers);
    long rows = Math.round(Math.pow(10, layers));
    CandidateTable table = independent ? candidates.independent(rows) : candidates.table();
    System.out.printf(
        Locale.ROOT, "%,d candidates, %s%n", rows, independent ? INDEPENDENT : "layered");
    SplittableRandom random = new SplittableRandom(1);
    print("all weights drawn anew", table, () -> candidates.moved(random));
    print("one value function edited", table, () -> candidates.edited(random.nextDouble()));
    print("plain read of the same columns", SCANS, () -> PlainScan.largestSum(table));
    int[] probed = new int[PROBED];
    print("256 MiB read by the simplest loop", SCANS, () -> sum(probed));
  }

  private static int sum(int[] numbers) {
    int sum = 0;
    for (int number : numbers) {
      sum += number;
    }
    return sum;
  }

  private static void print(String what, CandidateTable table, Supplier<ValueModel> model) {
    Ranker ranker =
        new Ranker(
            table,
            path -> {
              throw new IllegalStateException("nothing is bounded here");
            });
    for (int i = 0; i < WARM_UP; i++) {
      ranker.refine(model.get(), BEST);
    }
    ValueModel[] moves =
        IntStream.range(0, MOVES).mapToObj(i -> model.get()).toArray(ValueModel[]::new);
    int[] move = {0};
    print(what, MOVES, () -> ranker.refine(moves[move[0]++], BEST));
  }

  private static void print(String what, int times, Supplier<?> work) {
    double[] millis = new double[times];
    for (int i = 0; i < times; i++) {
      long start = THREADS.getCurrentThreadCpuTime();
      work.get();
      millis[i] = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
    }
    Arrays.sort(millis);
    System.out.printf(
        Locale.ROOT,
        "  %s: fastest %.2f ms, median %.2f ms, 95 %% within %.2f ms, slowest %.2f ms%n",
        what,
        millis[0],
        millis[times / 2],
        millis[(int) (0.95 * (times - 1))],
        millis[times - 1]);
  }
}
