package plyworth.workbench.engine.search;

/**
 * What a search cost.
 *
 * @param popped prefixes taken from the queue
 * @param pushed prefixes put into the queue
 * @param opened prefixes opened, from the queue or depth-first
 * @param bounded prefixes bounded
 * @param scored candidates scored
 * @param longestQueue most prefixes that waited at once
 * @param deepened prefixes opened depth-first because the queue was full
 * @param complete whether it went to the end; otherwise it was cancelled
 * @param seconds time it took
 */
public record SearchEffort(
    long popped,
    long pushed,
    long opened,
    long bounded,
    long scored,
    int longestQueue,
    long deepened,
    boolean complete,
    double seconds) {

  /** Memory that the queue took at most, in bytes, by the estimate that its limit is kept with. */
  public long queueBytes() {
    return longestQueue * Prefix.BYTES;
  }
}
