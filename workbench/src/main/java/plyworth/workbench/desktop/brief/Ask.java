package plyworth.workbench.desktop.brief;

import java.util.List;
import java.util.Set;

/**
 * How something of a brief is asked.
 *
 * @param section the page it stands on
 * @param how what it is typed into
 * @param measure what a figure measures; null for anything else
 * @param low lowest figure, in the inside unit
 * @param lowAllowed whether the lowest itself may be
 * @param high highest figure, in the inside unit; may be infinite
 * @param whole whether the figure is a whole number
 * @param optional whether it may stay empty
 * @param words what the keys of the choices begin with
 * @param choices what may be chosen
 * @param hinted whether a hint of its own stands beside it
 * @param governor what decides whether it is asked; null when it always is
 * @param when the answers to that with which it is asked
 */
public record Ask(
    BriefSection section,
    How how,
    Measure measure,
    double low,
    boolean lowAllowed,
    double high,
    boolean whole,
    boolean optional,
    String words,
    List<String> choices,
    boolean hinted,
    BriefField governor,
    Set<String> when) {

  /** What an answer is typed into. */
  enum How {
    /** One line of words. */
    LINE,
    /** Lines of words. */
    AREA,
    /** A figure with a unit. */
    FIGURE,
    /** One of some. */
    CHOICE,
    /** Any of some. */
    CHECKS,
    /** A structure in layer notation. */
    NOTATION,
    /** Two figures for each month. */
    MONTHS,
    /** Lines of figures, as of a table. */
    LINES
  }

  private static Ask plain(BriefSection section, How how, String words, List<String> choices) {
    return new Ask(
        section, how, null, 0, true, 0, false, false, words, choices, false, null, Set.of());
  }

  /** Words that are needed, or lines of figures. */
  static Ask words(BriefSection section, How how) {
    return plain(section, how, "", List.of());
  }

  /** A figure within bounds that are allowed themselves. */
  static Ask figure(BriefSection section, Measure measure, double low, double high) {
    return figure(section, measure, low, true, high, false);
  }

  /** A figure greater than 0. */
  static Ask positive(BriefSection section, Measure measure) {
    return figure(section, measure, 0, false, Double.POSITIVE_INFINITY, false);
  }

  /** A figure that is 0 or more. */
  static Ask notNegative(BriefSection section, Measure measure) {
    return figure(section, measure, 0, true, Double.POSITIVE_INFINITY, false);
  }

  /** A whole number within bounds. */
  static Ask count(BriefSection section, double low, double high) {
    return figure(section, Measure.PLAIN, low, true, high, true);
  }

  private static Ask figure(
      BriefSection section,
      Measure measure,
      double low,
      boolean lowAllowed,
      double high,
      boolean whole) {
    return new Ask(
        section,
        How.FIGURE,
        measure,
        low,
        lowAllowed,
        high,
        whole,
        false,
        "",
        List.of(),
        false,
        null,
        Set.of());
  }

  /** One, or any, of some words. */
  static Ask choice(BriefSection section, How how, String words, List<String> choices) {
    return plain(section, how, words, choices);
  }

  /** The same, which may stay empty. */
  Ask orNothing() {
    return but(true, hinted, governor, when);
  }

  /** The same with a hint of its own. */
  Ask explained() {
    return but(optional, true, governor, when);
  }

  /** The same, asked only with certain answers to another question. */
  Ask with(BriefField other, String... answers) {
    return but(optional, hinted, other, Set.of(answers));
  }

  private Ask but(boolean empty, boolean explained, BriefField other, Set<String> answers) {
    return new Ask(
        section,
        how,
        measure,
        low,
        lowAllowed,
        high,
        whole,
        empty,
        words,
        choices,
        explained,
        other,
        answers);
  }
}
