package plyworth.workbench.engine.table;

import java.util.List;
import plyworth.workbench.host.BoundCriterion;

/**
 * Every candidate of a graph, or the first of them, with its figures as columns. The row of a
 * candidate is its path number.
 */
public final class CandidateTable {

  private final List<BoundCriterion> criteria;
  private final Chunk[] chunks;
  private final long rows;
  private final long total;

  CandidateTable(List<BoundCriterion> criteria, Chunk[] chunks, long total) {
    this.criteria = List.copyOf(criteria);
    this.chunks = chunks;
    this.total = total;
    long sum = 0;
    for (Chunk chunk : chunks) {
      sum += chunk.size();
    }
    rows = sum;
  }

  /** A table of which no row is filled. */
  public static CandidateTable unfilled(List<BoundCriterion> criteria, long total) {
    return new CandidateTable(criteria, new Chunk[0], total);
  }

  /** The criteria; their order is that of the columns. */
  public List<BoundCriterion> criteria() {
    return criteria;
  }

  /** Candidates in the table: the paths 0 to this, itself left out. */
  public long rows() {
    return rows;
  }

  /** Candidates in the graph. */
  public long total() {
    return total;
  }

  /** Whether every candidate is in the table; otherwise it is partial. */
  public boolean complete() {
    return rows == total;
  }

  /** Number of chunks. */
  public int chunks() {
    return chunks.length;
  }

  /** A chunk; the first holds the paths from 0 on, all but the last are full. */
  public Chunk chunk(int index) {
    return chunks[index];
  }

  /** The chunk that holds a path. */
  public Chunk chunkOf(long path) {
    return chunks[(int) (path / Chunk.ROWS)];
  }

  /** The row of a path within its chunk. */
  public static int rowOf(long path) {
    return (int) (path % Chunk.ROWS);
  }

  /** Number of candidates per code of {@link Chunk#codes}. */
  public long count(byte code) {
    long count = 0;
    for (Chunk chunk : chunks) {
      count += chunk.count(code);
    }
    return count;
  }
}
