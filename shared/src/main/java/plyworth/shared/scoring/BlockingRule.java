package plyworth.shared.scoring;

/**
 * A rule by which a plugin can block a candidate. No weighting lifts a block.
 *
 * @param id identifier within the plugin: lower case, digits, hyphens
 * @param title what it blocks, on screens
 * @param ground why a candidate that it blocks is out
 */
public record BlockingRule(String id, Text title, Ground ground) {

  /** Why a blocked candidate is out. */
  public enum Ground {
    /** It does not do what the brief asks for. */
    UNFIT,
    /** It may do it, but it cannot be made: a machine or a material is not at hand. */
    NOT_MAKEABLE
  }

  /** A rule that blocks what does not do what the brief asks for. */
  public BlockingRule(String id, Text title) {
    this(id, title, Ground.UNFIT);
  }
}
