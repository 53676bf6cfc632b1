package plyworth.workbench.robustness;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.ValueModel;

/** Toy studies made ready to be ranked under any weights. */
final class ToyContest {

  private ToyContest() {}

  static ValueModel model(ToyStudy study, Map<String, Double> weights, List<Limit> limits) {
    return ValueModel.of(study.plugins().criteria(), new Weighting("w", weights), Map.of(), limits);
  }

  /** A model with one weight per criterion of the one plugin. */
  static ValueModel model(ToyStudy study, double... weights) {
    Map<String, Double> named = new TreeMap<>();
    for (double weight : weights) {
      named.put("given/c" + named.size(), weight);
    }
    return model(study, named, List.of());
  }

  static Contest of(ToyStudy study, ValueModel model) {
    Ranker ranker =
        new Ranker(
            Tabulation.of(study.graph(), study.plugins()).run(Progress.NONE, 2), study::figures);
    return new Contest(model, ranker, study::figures);
  }

  /** Every ranked candidate. */
  static List<Long> ranked(Contest contest) {
    return contest.best(Integer.MAX_VALUE).stream().map(RankedCandidate::path).toList();
  }

  /** Σ weight · value. */
  static double value(Contest contest, double[] weights, long path) {
    double[] values = contest.values(path);
    double sum = 0;
    for (int c = 0; c < values.length; c++) {
      sum += weights[c] * values[c];
    }
    return sum;
  }
}
