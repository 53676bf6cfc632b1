package plyworth.workbench.speed;

import java.util.Arrays;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/** Reads every column of a table once, without skipping anything. */
final class PlainScan {

  private PlainScan() {}

  /** The largest sum of a row. */
  static double largestSum(CandidateTable table) {
    float[] sums = new float[Chunk.ROWS];
    float largest = Float.NEGATIVE_INFINITY;
    for (int i = 0; i < table.chunks(); i++) {
      Chunk chunk = table.chunk(i);
      Arrays.fill(sums, 0);
      for (int c = 0; c < chunk.criteria(); c++) {
        if (chunk.has(c)) {
          add(chunk.low(c), sums);
        }
      }
      largest = Math.max(largest, largest(sums, chunk.size()));
    }
    return largest;
  }

  private static void add(float[] column, float[] sums) {
    for (int row = 0; row < column.length; row++) {
      sums[row] += column[row];
    }
  }

  private static float largest(float[] sums, int size) {
    float largest = Float.NEGATIVE_INFINITY;
    for (int row = 0; row < size; row++) {
      largest = sums[row] > largest ? sums[row] : largest;
    }
    return largest;
  }
}
