package plyworth.shared.scoring;

import java.util.Objects;

/**
 * A remark of a plugin on a structure.
 *
 * @param level how grave
 * @param rule id of the rule that fired; for {@link Level#BLOCKS} the id of a declared {@link
 *     BlockingRule}
 * @param text the remark
 * @param source the source behind the rule, or {@code common practice}
 */
public record Finding(Level level, String rule, Text text, String source) {

  /** How grave a finding is. */
  public enum Level {
    /** The candidate is out. */
    BLOCKS,
    /** To be watched or tested. */
    WARNS,
    /** Good to know. */
    INFORMS
  }

  /**
   * Refuses a finding without source.
   *
   * @throws IllegalArgumentException when the source is blank
   */
  public Finding {
    Objects.requireNonNull(level, "level");
    if (source.isBlank()) {
      throw new IllegalArgumentException("the finding " + rule + " names no source");
    }
  }
}
