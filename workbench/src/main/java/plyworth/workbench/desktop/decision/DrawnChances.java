package plyworth.workbench.desktop.decision;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.session.CandidateName;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.robustness.Acceptability;
import plyworth.workbench.robustness.Chance;

/**
 * What draws say, and what the candidates to be shown are called.
 *
 * @param found the chances of all that were compared
 * @param listed those to be shown: most often first
 * @param names of these, by path number
 */
record DrawnChances(Acceptability found, List<Chance> listed, Map<Long, String> names) {

  private static final int MOST_BARS = 12;

  /**
   * Draws.
   *
   * @param rivals candidates to compare whatever they are worth
   * @throws CancellationException when it is stopped before the first draw
   */
  static DrawnChances of(
      Ranked ranked, List<Long> rivals, Acceptability.Plan plan, Progress progress) {
    Acceptability found = Acceptability.of(ranked, rivals, plan, progress);
    if (found.draws() == 0) {
      throw new CancellationException();
    }
    List<Chance> listed =
        found.chances().stream().filter(c -> c.first() > 0).limit(MOST_BARS).toList();
    Map<Long, String> names = new HashMap<>();
    listed.forEach(c -> names.put(c.path(), CandidateName.of(ranked, c.path())));
    return new DrawnChances(found, listed, names);
  }
}
