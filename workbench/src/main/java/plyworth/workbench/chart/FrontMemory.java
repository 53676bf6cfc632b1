package plyworth.workbench.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Limit;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.ranking.ParetoFront;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * Finds fronts over all candidates and remembers the last one: it hangs on scores, limits and value
 * functions and not on how much a criterion weighs, so that a moved weight costs nothing.
 */
public final class FrontMemory {

  private record Key(
      CandidateTable table,
      List<Limit> limits,
      Map<String, ValueFunction> functions,
      List<Integer> criteria) {}

  private Key known;
  private Optional<ParetoFront> front = Optional.empty();

  /**
   * The front of some criteria.
   *
   * @param criteria their places in the value model
   * @return empty when the table has no figures of one of them, or there is no table
   */
  public synchronized Optional<ParetoFront> of(Ranked ranked, int[] criteria) {
    Key key =
        new Key(
            ranked.scored().table(),
            ranked.study().limits(),
            ranked.study().valueFunctions(),
            Arrays.stream(criteria).boxed().toList());
    if (!key.equals(known)) {
      front = find(ranked, criteria);
      known = key;
    }
    return front;
  }

  private static Optional<ParetoFront> find(Ranked ranked, int[] criteria) {
    CandidateTable table = ranked.scored().table();
    boolean there =
        criteria.length > 0
            && table.chunks() > 0
            && Arrays.stream(criteria).allMatch(table.chunk(0)::has);
    ValueModel model = ranked.ranking().model();
    return ranked
        .tableRanker()
        .filter(ranker -> there)
        .map(ranker -> ranker.paretoFront(weighing(model, criteria), Plotted.LARGEST_FRONT));
  }

  private static ValueModel weighing(ValueModel model, int[] criteria) {
    double weight = 1.0 / criteria.length;
    List<Weighed> weighed = new ArrayList<>();
    for (Weighed before : model.criteria()) {
      int place = weighed.size();
      double share = IntStream.of(criteria).anyMatch(c -> c == place) ? weight : 0;
      weighed.add(new Weighed(before.criterion(), before.value(), share, share));
    }
    return new ValueModel(weighed, model.limits(), model.lost(), model.moot());
  }
}
