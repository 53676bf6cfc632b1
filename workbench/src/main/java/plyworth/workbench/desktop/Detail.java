package plyworth.workbench.desktop;

import java.util.Map;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranges;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;

/**
 * Everything shown of the selected structure.
 *
 * @param sheet its figures, findings and standing
 * @param ranges range of every criterion, by full id
 * @param explanations breakdown by plugin id
 */
record Detail(Sheet sheet, Map<String, Range> ranges, Map<String, Explanation> explanations) {

  static final int DRAWS = 100;

  static Detail of(Ranked ranked, Structure structure) {
    return new Detail(
        ranked.sheet(structure),
        Ranges.of(ranked.scored().compiled().prepared(), structure, DRAWS, 1),
        ranked.scored().compiled().prepared().bound().explain(structure));
  }
}
