package plyworth.workbench.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.Objection;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.ValueModel;

/**
 * Everything known of one structure in one study, scored in full.
 *
 * @param structure the structure
 * @param path its number among the candidates; empty when it is not on offer
 * @param objections why it is not on offer; empty when it is
 * @param assessments what each plugin says, by plugin id
 * @param outcomes what came out per criterion, in the order of the value model
 * @param valuation what it is worth
 * @param group where it stands
 */
public record Sheet(
    Structure structure,
    OptionalLong path,
    List<Objection> objections,
    Map<String, Assessment> assessments,
    List<Outcome> outcomes,
    Valuation valuation,
    Group group) {

  /** Scores a structure, on offer or not. */
  public static Sheet of(Compiled compiled, ValueModel model, Structure structure) {
    BoundPlugins bound = compiled.prepared().bound();
    Map<String, Assessment> assessments = bound.score(structure);
    return valued(
        structure,
        compiled.paths().pathOf(structure),
        compiled.objections(structure),
        assessments,
        bound.criteria().stream().map(c -> bound.outcome(assessments, c)).toList(),
        model);
  }

  /** The same scores under another value model over the same criteria. */
  public Sheet under(ValueModel model) {
    return valued(structure, path, objections, assessments, outcomes, model);
  }

  private static Sheet valued(
      Structure structure,
      OptionalLong path,
      List<Objection> objections,
      Map<String, Assessment> assessments,
      List<Outcome> outcomes,
      ValueModel model) {
    double[] figures = outcomes.stream().mapToDouble(Outcome::orUnknown).toArray();
    boolean blocked = assessments.values().stream().anyMatch(Assessment::blocked);
    return new Sheet(
        structure,
        path,
        objections,
        assessments,
        outcomes,
        model.value(figures),
        model.group(figures, blocked));
  }

  /** Whether it is among the candidates of the study. */
  public boolean onOffer() {
    return path.isPresent();
  }

  /** All findings, gravest first, each with the plugin that made it. */
  public List<Remark> remarks() {
    return assessments.entrySet().stream()
        .flatMap(e -> e.getValue().findings().stream().map(f -> new Remark(e.getKey(), f)))
        .sorted(Comparator.comparing(r -> r.finding().level()))
        .toList();
  }

  /**
   * A finding and the plugin that made it.
   *
   * @param plugin id of the plugin
   * @param finding the finding
   */
  public record Remark(String plugin, Finding finding) {}
}
