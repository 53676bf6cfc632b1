package plyworth.workbench.robustness;

import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * One figure of one structure in any world: a criterion, or the value.
 *
 * @param study the study
 * @param catalog the plugins that matter to the figure
 * @param model value functions and weights
 * @param structure the structure
 * @param criterion place of the criterion in the model; empty for the value
 */
record Trial(
    Study study,
    PluginCatalog catalog,
    ValueModel model,
    Structure structure,
    OptionalInt criterion) {

  /** A trial with no more plugins than the figure depends on. */
  static Trial of(Prepared prepared, ValueModel model, Structure structure, OptionalInt criterion) {
    Set<String> plugins =
        criterion.isPresent()
            ? Set.of(plugin(prepared, model.criteria().get(criterion.getAsInt())))
            : model.criteria().stream()
                .filter(Weighed::counts)
                .map(weighed -> plugin(prepared, weighed))
                .collect(Collectors.toCollection(TreeSet::new));
    return new Trial(
        prepared.study(), prepared.catalog().only(plugins), model, structure, criterion);
  }

  private static String plugin(Prepared prepared, Weighed weighed) {
    return prepared.bound().plugins().get(weighed.criterion().plugin()).id();
  }

  /**
   * The figure in one world; NaN when it is unknown. In a value the unknown counts at its worst.
   */
  double figure(Draw draw) {
    BoundPlugins bound = BoundPlugins.bind(catalog, study, draw);
    Map<String, Assessment> assessments = bound.score(structure);
    double[] figures =
        model.criteria().stream()
            .mapToDouble(
                weighed ->
                    bound
                        .criterion(weighed.criterion().id())
                        .map(c -> bound.outcome(assessments, c).orUnknown())
                        .orElse(Double.NaN))
            .toArray();
    return criterion.isPresent() ? figures[criterion.getAsInt()] : model.value(figures).value();
  }
}
