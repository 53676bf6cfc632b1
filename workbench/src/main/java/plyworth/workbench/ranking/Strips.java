package plyworth.workbench.ranking;

import plyworth.workbench.engine.table.Chunk;

/** The parts of a zone: what neighbours have in common makes their bounds tight. */
final class Strips {

  /** Candidates in a full strip. */
  static final int ROWS = 8;

  /** Strips in a full zone. */
  static final int PER_ZONE = Chunk.ZONE / ROWS;

  private Strips() {}
}
