package plyworth.shared.scoring;

/**
 * A rule by which a plugin can block a candidate. No weighting lifts a block.
 *
 * @param id identifier within the plugin: lower case, digits, hyphens
 * @param title what it blocks, on screens
 */
public record BlockingRule(String id, Text title) {}
