package plyworth.workbench.engine.search;

/**
 * What a search cost.
 *
 * @param opened prefixes opened
 * @param bounded prefixes bounded
 * @param scored candidates scored
 * @param longestQueue most prefixes that waited at once
 * @param deepened prefixes opened depth-first because the queue was full
 * @param complete whether it went to the end; otherwise it was cancelled
 * @param seconds time it took
 */
public record SearchEffort(
    long opened,
    long bounded,
    long scored,
    int longestQueue,
    long deepened,
    boolean complete,
    double seconds) {}
