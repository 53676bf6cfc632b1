package plyworth.workbench.ranking;

/**
 * What a candidate costs those who would have chosen another.
 *
 * @param path path number of the candidate
 * @param greatest the greatest loss of value against the best candidate under any of several value
 *     models, 0 to 1
 */
public record Regret(long path, double greatest) {}
