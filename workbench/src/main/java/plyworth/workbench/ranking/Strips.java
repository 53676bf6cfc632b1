package plyworth.workbench.ranking;

import plyworth.workbench.engine.table.Chunk;

/** The parts of a zone: what neighbours have in common makes their bounds tight. */
final class Strips {

  /** Candidates in a full strip. */
  static final int ROWS = 8;

  /** Strips in a full zone. */
  static final int PER_ZONE = Chunk.ZONE / ROWS;

  /** Strips in a full chunk. */
  static final int PER_CHUNK = Chunk.ROWS / ROWS;

  private Strips() {}

  /** Strips in so many candidates. */
  static int in(int rows) {
    return (rows + ROWS - 1) / ROWS;
  }
}
