package plyworth.workbench.ranking;

import plyworth.workbench.engine.table.Chunk;

/** Runs of zones, the coarsest that a ranking looks at; their bounds lie together in memory. */
final class Bands {

  /** Zones in a full band. */
  static final int ZONES = 8;

  /** Candidates in a full band. */
  static final int ROWS = ZONES * Chunk.ZONE;

  /** Bands in a full chunk. */
  static final int PER_CHUNK = Chunk.ROWS / ROWS;

  private Bands() {}

  /** Bands in so many candidates. */
  static int in(long rows) {
    return Math.toIntExact((rows + ROWS - 1) / ROWS);
  }
}
