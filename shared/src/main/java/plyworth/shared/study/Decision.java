package plyworth.shared.study;

/**
 * What was decided.
 *
 * @param structure chosen structure in layer notation; empty while nothing is decided
 * @param reasons why; may be empty
 */
public record Decision(String structure, String reasons) {

  /** Nothing is decided yet. */
  public static final Decision OPEN = new Decision("", "");
}
