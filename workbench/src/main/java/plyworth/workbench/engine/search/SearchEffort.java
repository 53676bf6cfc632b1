package plyworth.workbench.engine.search;

/**
 * What a search cost.
 *
 * @param popped regions, or outer pieces, taken from the queue
 * @param pushed those put into the queue
 * @param opened those opened, from the queue or depth-first
 * @param bounded those bounded anew
 * @param scored candidates scored
 * @param longestQueue most that waited at once
 * @param queueBytes memory that those waiting took at most, by the estimate that its limit is kept
 *     with
 * @param deepened those opened depth-first because the queue was full
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
    long queueBytes,
    long deepened,
    boolean complete,
    double seconds) {}
