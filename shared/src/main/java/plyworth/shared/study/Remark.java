package plyworth.shared.study;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import plyworth.shared.structure.Structure;

/**
 * What somebody says of a candidate.
 *
 * @param structure the candidate
 * @param by who says it; may be empty
 * @param date when, as year-month-day; may be empty
 * @param text what is said; never empty
 */
public record Remark(Structure structure, String by, String date, String text) {

  /**
   * Checks the text and the date.
   *
   * @throws IllegalArgumentException when one of them is wrong
   */
  public Remark {
    if (text.isBlank()) {
      throw new IllegalArgumentException("a remark says nothing; write it, or take it out");
    }
    if (!date.isEmpty() && !isDay(date)) {
      throw new IllegalArgumentException(
          ("the date of a remark is \"" + date)
              + "\"; write year-month-day, for example 2026-03-12, or nothing");
    }
  }

  private static boolean isDay(String date) {
    try {
      LocalDate.parse(date);
      return true;
    } catch (DateTimeParseException e) {
      return false;
    }
  }
}
