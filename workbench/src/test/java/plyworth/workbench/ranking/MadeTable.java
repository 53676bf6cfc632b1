package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import plyworth.shared.scoring.Join;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.TableOfColumns;
import plyworth.workbench.host.BoundCriterion;

/**
 * A random table of several chunks with ties, bounded and unknown figures and blocked candidates.
 *
 * @param figures row by criterion, as full scoring finds them
 * @param blocked by row
 */
record MadeTable(CandidateTable table, double[][] figures, boolean[] blocked) {

  static final int CRITERIA = 4;
  private static final int ROWS = 2 * Chunk.ROWS + 3 * Chunk.ZONE + 5;

  static final List<BoundCriterion> OF =
      ToyStudy.bound(
              List.of(
                  new ToyPlugin(
                          "a",
                          List.of(Join.SUM, Join.SUM, Join.SUM, Join.SUM),
                          List.of(),
                          List.of(),
                          true,
                          false)
                      .bound()))
          .criteria();

  static MadeTable of(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[][] figures = new double[ROWS][CRITERIA];
    boolean[] blocked = new boolean[ROWS];
    boolean[] bounded = {seed % 2 == 0, false, seed % 3 == 0, false};
    int[] levels = {1 + random.nextInt(400), 9, 1000, 3 + random.nextInt(60)};
    for (int row = 0; row < ROWS; row++) {
      blocked[row] = random.nextInt(10) == 0;
      for (int c = 0; c < CRITERIA; c++) {
        int drift = row / (700 * (c + 1)) % 5;
        figures[row][c] =
            random.nextInt(40) == 0 ? Double.NaN : drift + random.nextInt(levels[c]) / 256.0;
      }
    }
    CandidateTable table =
        TableOfColumns.of(
            OF,
            ROWS,
            (path, low, high, codes) -> {
              for (int row = 0; row < codes.length; row++) {
                double[] exact = figures[(int) path + row];
                boolean known = Arrays.stream(exact).noneMatch(Double::isNaN);
                codes[row] = known ? Chunk.SCORED : Chunk.UNKNOWN;
                codes[row] = blocked[(int) path + row] ? Chunk.BLOCKED : codes[row];
              }
              for (int c = 0; c < CRITERIA; c++) {
                high[c] = bounded[c] ? new float[codes.length] : low[c];
                for (int row = 0; row < codes.length; row++) {
                  float figure = (float) figures[(int) path + row][c];
                  boolean wide = bounded[c] && row % 7 < 3;
                  low[c][row] = wide ? figure - 0.25f : figure;
                  high[c][row] = wide ? figure + 0.125f : figure;
                }
              }
            });
    return new MadeTable(table, figures, blocked);
  }

  /** The best by scoring every candidate in full and sorting them all. */
  List<Shortlist.Entry> sorted(ValueModel model, int k) {
    List<Shortlist.Entry> all = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      if (model.group(figures[row], blocked[row]) == Group.RANKED) {
        all.add(new Shortlist.Entry(model.value(figures[row]).value(), row));
      }
    }
    all.sort(
        Comparator.comparingDouble(Shortlist.Entry::value)
            .reversed()
            .thenComparingLong(Shortlist.Entry::path));
    return all.subList(0, Math.min(k, all.size()));
  }
}
