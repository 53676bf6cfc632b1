package plyworth.workbench.engine.table;

import java.util.Locale;

/**
 * How much memory a candidate table takes, known before anything is scored.
 *
 * @param rows candidates
 * @param columns criteria with a column
 * @param bounded criteria that take a second column because they are only bounded
 * @param bytes memory of the finished table and of what it takes to fill it
 * @param budget memory it may take
 */
public record TableSize(long rows, int columns, int bounded, long bytes, long budget) {

  /** Share of the heap that a table may take. */
  public static final double HEAP_SHARE = 0.4;

  /** What a table may take in this program: {@link #HEAP_SHARE} of the largest heap. */
  public static long standardBudget() {
    return (long) (HEAP_SHARE * Runtime.getRuntime().maxMemory());
  }

  /** Whether it may be filled. */
  public boolean fits() {
    return bytes <= budget;
  }

  /** The size in words. */
  public String statement() {
    return String.format(
        Locale.ROOT,
        "%,d candidates with %d criteria take %s; %s may be used",
        rows,
        columns,
        amount(bytes),
        amount(budget));
  }

  private static String amount(long bytes) {
    double mebibytes = bytes / 1048576.0;
    return mebibytes < 1024
        ? String.format(Locale.ROOT, "%.1f MiB", mebibytes)
        : String.format(Locale.ROOT, "%,.1f GiB", mebibytes / 1024);
  }
}
