package plyworth.workbench.ranking;

import java.util.List;

/** Numbers the sets of criteria that count, one after another, by what they are worth. */
final class Generations {

  private List<CriterionValues> last = List.of();
  private int number;

  /** The number of some criteria: the last one, unless they are others. */
  int of(List<CriterionValues> counting) {
    if (number == 0 || !counting.equals(last)) {
      last = counting;
      number++;
    }
    return number;
  }
}
