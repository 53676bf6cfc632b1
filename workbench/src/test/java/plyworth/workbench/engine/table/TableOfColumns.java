package plyworth.workbench.engine.table;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import plyworth.workbench.host.BoundCriterion;

/** Makes tables out of figures that no plugin scored. */
public final class TableOfColumns {

  private TableOfColumns() {}

  /** The figures of one chunk after another. */
  public interface Source {

    /**
     * Writes the rows of a chunk.
     *
     * @param path path number of the first row
     * @param low criterion by row
     * @param high the same arrays; an own one where figures are bounded may be put in
     * @param codes of the candidates, see {@link Chunk#codes}
     */
    void fill(long path, float[][] low, float[][] high, byte[] codes);
  }

  /** A whole table, filled by all cores. */
  public static CandidateTable of(List<BoundCriterion> criteria, long rows, Source source) {
    int count = Math.toIntExact((rows + Chunk.ROWS - 1) / Chunk.ROWS);
    Chunk[] chunks =
        IntStream.range(0, count)
            .parallel()
            .mapToObj(i -> chunk(criteria.size(), i, rows, source))
            .toArray(Chunk[]::new);
    return new CandidateTable(criteria, chunks, rows);
  }

  private static Chunk chunk(int criteria, int index, long rows, Source source) {
    long path = (long) index * Chunk.ROWS;
    int size = (int) Math.min(Chunk.ROWS, rows - path);
    float[][] low = new float[criteria][size];
    float[][] high = Arrays.copyOf(low, criteria);
    byte[] codes = new byte[size];
    source.fill(path, low, high, codes);
    return new Chunk(low, high, codes);
  }
}
