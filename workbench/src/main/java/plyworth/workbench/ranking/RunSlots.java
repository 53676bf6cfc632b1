package plyworth.workbench.ranking;

import plyworth.workbench.engine.table.Chunk;

/**
 * Where what is kept of chunks, zones and strips stands, the same for every criterion.
 *
 * @param generations numbers the criteria that count
 */
record RunSlots(Slots chunks, Slots zones, Slots strips, Generations generations) {

  /** Most zones whose strips are kept, 64 bytes each and criterion. */
  private static final int ZONES = 1 << 20;

  /** Most strips whose rows are kept, 32 bytes each and criterion. */
  private static final int STRIPS = 1 << 18;

  /** For a table of so many chunks. */
  static RunSlots of(int chunks) {
    return new RunSlots(
        new Slots(chunks, 1, chunks),
        new Slots(chunks, Chunk.ROWS / Chunk.ZONE, ZONES),
        new Slots(chunks, Chunk.ROWS / Strips.ROWS, STRIPS),
        new Generations());
  }
}
