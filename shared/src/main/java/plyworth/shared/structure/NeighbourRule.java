package plyworth.shared.structure;

/**
 * A rule on which layers may stand together, with its reason. Rules forbid; the rest is allowed.
 */
public sealed interface NeighbourRule {

  /** Identifier, unique in a study. */
  String id();

  /** Why, in one sentence. */
  String reason();

  /** Where the rule comes from, or {@code common practice}. */
  String source();

  /**
   * Two layers that must not touch.
   *
   * @param id identifier
   * @param outer the outer of the two
   * @param inner the inner of the two
   * @param reason why
   * @param source where from
   */
  record Neighbours(
      String id, KindExpression outer, KindExpression inner, String reason, String source)
      implements NeighbourRule {}

  /**
   * Two webs that must not be joined by such a bond; print and coatings between them are looked
   * through.
   *
   * @param id identifier
   * @param outer the outer web
   * @param bond the bond; null means that no bond stands between the two
   * @param inner the inner web
   * @param reason why
   * @param source where from
   */
  record WebBondWeb(
      String id,
      KindExpression outer,
      KindExpression bond,
      KindExpression inner,
      String reason,
      String source)
      implements NeighbourRule {}

  /**
   * The two outermost layers, when they must not make up the face of the pack; further in they may
   * touch.
   *
   * @param id identifier
   * @param outer the outermost layer
   * @param inner the one directly inside it
   * @param reason why
   * @param source where from
   */
  record Face(String id, KindExpression outer, KindExpression inner, String reason, String source)
      implements NeighbourRule {}

  /**
   * What the outermost layer must be.
   *
   * @param id identifier
   * @param only what may stand outermost
   * @param reason why
   * @param source where from
   */
  record Outermost(String id, KindExpression only, String reason, String source)
      implements NeighbourRule {}

  /**
   * What the innermost layer must be.
   *
   * @param id identifier
   * @param only what may stand innermost
   * @param reason why
   * @param source where from
   */
  record Innermost(String id, KindExpression only, String reason, String source)
      implements NeighbourRule {}

  /**
   * How many layers of a kind there may be at most.
   *
   * @param id identifier
   * @param kind the layers counted
   * @param n the most allowed, from 0
   * @param reason why
   * @param source where from
   */
  record AtMost(String id, KindExpression kind, int n, String reason, String source)
      implements NeighbourRule {}

  /**
   * How many layers of a kind there must be at least.
   *
   * @param id identifier
   * @param kind the layers counted
   * @param n the fewest allowed, from 1
   * @param reason why
   * @param source where from
   */
  record AtLeast(String id, KindExpression kind, int n, String reason, String source)
      implements NeighbourRule {}
}
