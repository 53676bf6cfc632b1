package plyworth.workbench.desktop.decision;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * What a trade-off plot is asked to show, as places in the value model.
 *
 * @param x the criterion across
 * @param y the criterion upwards
 * @param marks the criterion of the marks; {@link #NONE} for none
 * @param overWeighted whether the front is over all criteria with weight, and not over the two axes
 */
record TradeOffChoice(int x, int y, int marks, boolean overWeighted) {

  static final int NONE = -1;

  /** The three that weigh most of those that tell the best apart. */
  static TradeOffChoice standard(Ranked ranked) {
    ValueModel model = ranked.ranking().model();
    List<Integer> heaviest =
        offered(model).stream()
            .sorted(
                Comparator.comparing((Integer c) -> !differs(ranked, c))
                    .thenComparing(c -> -model.criteria().get(c).weight()))
            .toList();
    int first = heaviest.get(0);
    return new TradeOffChoice(
        first,
        heaviest.size() > 1 ? heaviest.get(1) : first,
        heaviest.size() > 2 ? heaviest.get(2) : NONE,
        false);
  }

  private static boolean differs(Ranked ranked, int criterion) {
    return ranked.best().stream()
            .map(c -> c.valuation().parts().get(criterion).low())
            .distinct()
            .limit(2)
            .count()
        > 1;
  }

  /** The criteria that apply to the brief. */
  static List<Integer> offered(ValueModel model) {
    return IntStream.range(0, model.criteria().size())
        .filter(c -> model.criteria().get(c).criterion().applies())
        .boxed()
        .toList();
  }

  /** The criteria of the front. */
  int[] front(ValueModel model) {
    List<Weighed> criteria = model.criteria();
    return overWeighted
        ? IntStream.range(0, criteria.size()).filter(c -> criteria.get(c).counts()).toArray()
        : IntStream.of(x, y).distinct().toArray();
  }
}
