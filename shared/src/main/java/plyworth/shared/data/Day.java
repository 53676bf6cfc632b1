package plyworth.shared.data;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** A day as people write it, year-month-day. */
public final class Day {

  private Day() {}

  /**
   * Lets a day pass, or nothing.
   *
   * @param whose whose date it is, for the message: "a remark"
   * @throws IllegalArgumentException when it is neither
   */
  public static void require(String whose, String date) {
    if (date.isEmpty()) {
      return;
    }
    try {
      LocalDate.parse(date);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          ("the date of " + whose + " is \"" + date)
              + "\"; write year-month-day, for example 2026-03-12, or nothing",
          e);
    }
  }
}
