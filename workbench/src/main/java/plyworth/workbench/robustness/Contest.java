package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.List;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.ExactScores;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * A table of candidates that can be ranked under any weights.
 *
 * @param model value functions, limits and the weights in use
 * @param ranker ranks the table
 * @param exact full figures of single candidates
 */
public record Contest(ValueModel model, Ranker ranker, ExactScores exact) {

  /**
   * The candidates of a study that was ranked by its table.
   *
   * @throws IllegalArgumentException when its best were searched
   */
  public static Contest of(Ranked ranked) {
    Ranker ranker =
        ranked
            .tableRanker()
            .orElseThrow(() -> new IllegalArgumentException("a search ranks no table"));
    return new Contest(ranked.ranking().model(), ranker, ranked.exact());
  }

  /** The same candidates under another value model over the same criteria. */
  Contest under(ValueModel other) {
    return new Contest(other, ranker, exact);
  }

  /** The best candidates. */
  List<RankedCandidate> best(int k) {
    return ranker.refine(model, k).best();
  }

  /** What each criterion of a candidate is worth, 0 to 1; the unknown counts as 0. */
  double[] values(long path) {
    return model.value(exact.figures(path)).parts().stream()
        .mapToDouble(Valuation.Part::valueLow)
        .toArray();
  }

  /** The weights, in the order of the criteria; they add up to 1, or are all 0. */
  double[] weights() {
    return model.criteria().stream().mapToDouble(Weighed::weight).toArray();
  }

  /** The same candidates under other weights, in the order of the criteria. */
  Contest weighing(double[] weights) {
    List<Weighed> weighed = new ArrayList<>();
    for (Weighed before : model.criteria()) {
      double weight = weights[weighed.size()];
      weighed.add(new Weighed(before.criterion(), before.value(), weight, weight));
    }
    return under(new ValueModel(weighed, model.limits(), model.lost(), model.moot()));
  }
}
