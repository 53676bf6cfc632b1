package plyworth.workbench.speed;

import java.nio.file.Path;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.engine.table.TableSize;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.host.PluginCatalog;

/**
 * An example study, ready to be scored by the plugins that come along.
 *
 * @param study the study
 * @param compiled its candidates
 * @param tabulation ready to fill the columns that its weightings and limits ask for
 */
record Example(Study study, Compiled compiled, Tabulation tabulation) {

  private static final Path STUDIES = Path.of("../studies");

  /** The plugins that come along. */
  static final Path PLUGINS = Path.of("target/plyworth/plugins");

  /** The file of an example study. */
  static Path file(String name) {
    return STUDIES.resolve(name + StudyFile.SUFFIX);
  }

  static Example of(String name) {
    return of(name, study -> study);
  }

  /** The same, changed. */
  static Example of(String name, UnaryOperator<Study> change) {
    Study study = change.apply(StudyFile.open(file(name)).study());
    Compiled compiled = Compiled.of(Prepared.of(study, PluginCatalog.load(PLUGINS)), () -> false);
    Tabulation tabulation =
        Tabulation.of(
            compiled.paths(),
            compiled.prepared().bound(),
            criterion -> asksFor(study, criterion.id()),
            TableSize.standardBudget());
    return new Example(study, compiled, tabulation);
  }

  private static boolean asksFor(Study study, String criterion) {
    return study.weightings().stream().anyMatch(w -> w.weight(criterion) > 0)
        || study.limits().stream().anyMatch(l -> l.criterion().equals(criterion));
  }

  /** The weighting in use with each weight moved by up to half of itself. */
  Weighting moved(SplittableRandom random) {
    Weighting before = study.activeWeighting();
    Map<String, Double> weights = new TreeMap<>();
    before.weights().forEach((id, w) -> weights.put(id, w * (0.5 + random.nextDouble())));
    return new Weighting(before.name(), weights);
  }
}
