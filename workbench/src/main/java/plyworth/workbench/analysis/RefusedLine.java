package plyworth.workbench.analysis;

import plyworth.shared.data.DataException;

/**
 * A line of a file that is not taken over.
 *
 * @param line its number, from 1; 0 when it is not known
 * @param what what it speaks of, as it is written there
 * @param reason what is wrong with it, and what would be right
 */
public record RefusedLine(int line, String what, String reason) {

  /** The line that an exception was thrown for. */
  public static RefusedLine of(String what, DataException wrong) {
    String remedy = wrong.remedy().isEmpty() ? "" : ". " + wrong.remedy();
    return new RefusedLine(wrong.place().line(), what, wrong.problem() + remedy);
  }
}
