package plyworth.workbench.studies;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.ValueModel;

/** A study at work: single structures at once, rankings when they are asked for. */
final class Desk {

  private static final int BEST = 10;

  private final Study study;
  private final Compiled compiled;
  private final Map<String, Ranked> ranked = new ConcurrentHashMap<>();
  private Scored scored;

  Desk(Study study) {
    this.study = study;
    this.compiled = Compiled.of(Prepared.of(study, Examples.CATALOG), () -> false);
  }

  Study study() {
    return study;
  }

  Compiled compiled() {
    return compiled;
  }

  synchronized Scored scored() {
    if (scored == null) {
      scored = Scored.of(compiled, Progress.NONE);
    }
    return scored;
  }

  /** The ten best under a weighting. */
  synchronized Ranked ranked(String weighting) {
    return ranked.computeIfAbsent(
        weighting,
        name -> {
          Ranked first =
              ranked.isEmpty() ? Ranked.of(scored(), BEST) : ranked.values().iterator().next();
          return first.again(study.with(weighting(name)), BEST);
        });
  }

  /** The first under a weighting. */
  ScoredStructure leader(String weighting) {
    Ranked of = ranked(weighting);
    return new ScoredStructure(of.sheet(of.structure(of.best().get(0).path())));
  }

  /** A structure in layer notation, on offer or not. */
  ScoredStructure score(String structure) {
    return new ScoredStructure(sheet(structure));
  }

  /** What a criterion of a structure is worth, from 0 to 1. */
  double worth(String structure, String criterion) {
    return sheet(structure)
        .valuation()
        .parts()
        .get(model().indexOf(criterion).orElseThrow())
        .valueLow();
  }

  ScoredStructure baseline() {
    return new ScoredStructure(Sheet.of(compiled, model(), study.baseline()));
  }

  private Sheet sheet(String structure) {
    return Sheet.of(compiled, model(), LayerNotation.readStructure(structure));
  }

  private ValueModel model() {
    return ValueModel.of(compiled.prepared().bound().criteria(), study, study.activeWeighting());
  }

  private Weighting weighting(String name) {
    return study.weightings().stream().filter(w -> w.name().equals(name)).findFirst().orElseThrow();
  }
}
