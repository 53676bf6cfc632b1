package plyworth.workbench.command;

import java.io.IOException;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;

/** Gets a study ready to score single structures, without scoring its candidates. */
final class SingleStructure {

  private SingleStructure() {}

  static Ranked ready(Plyworth program, StudyArgument argument, Structure structure)
      throws IOException {
    PluginCatalog catalog = program.catalog();
    Study study = argument.read(catalog);
    for (Layer layer : structure.layers()) {
      study.materialsAtHand().require(layer.material());
      study.processesAtHand().role(layer);
    }
    Compiled counted = Compiled.of(Prepared.of(study, argument.narrowed(catalog)), () -> false);
    Compiled empty =
        new Compiled(counted.prepared(), counted.graph(), CompiledGraph.empty(), counted.seconds());
    Ranked ranked = Ranked.of(Scored.of(empty, Progress.NONE), 1);
    return new Ranked(
        new Scored(
            counted,
            ranked.scored().table(),
            ranked.scored().sizeStatement(),
            ranked.scored().seconds()),
        ranked.study(),
        ranked.ranker(),
        ranked.exact(),
        ranked.ranking(),
        ranked.best(),
        ranked.baseline(),
        ranked.seconds());
  }
}
