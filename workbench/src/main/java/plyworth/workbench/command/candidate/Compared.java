package plyworth.workbench.command.candidate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/**
 * A structure among those compared.
 *
 * @param name {@code today}, {@code rank 3}, or a letter
 * @param sheet the structure, scored in full
 */
public record Compared(String name, Sheet sheet) {

  /**
   * What a criterion adds to the value, or takes from it.
   *
   * @param criterion the criterion
   * @param value difference of contributions
   */
  record Gain(Weighed criterion, double value) {}

  /** What is gained and lost against another, the largest difference first; the unknown at 0. */
  List<Gain> against(Sheet other, List<Weighed> criteria) {
    List<Gain> gains = new ArrayList<>();
    for (int c = 0; c < criteria.size(); c++) {
      Valuation.Part own = sheet.valuation().parts().get(c);
      Valuation.Part before = other.valuation().parts().get(c);
      if (criteria.get(c).counts()) {
        gains.add(new Gain(criteria.get(c), own.contribution() - before.contribution()));
      }
    }
    gains.sort(Comparator.comparingDouble((Gain gain) -> -Math.abs(gain.value())));
    return gains;
  }
}
