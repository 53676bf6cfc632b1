package plyworth.shared.study;

import plyworth.shared.data.Day;
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
    Day.require("a remark", date);
  }
}
