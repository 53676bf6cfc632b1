package plyworth.workbench.analysis;

import java.util.List;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.Objection;
import plyworth.workbench.engine.graph.AddedOption;

/**
 * The smallest changes of a study that put a structure on offer. Every rule must be lifted that the
 * structure breaks, and no other; the options are the fewest layers by which the positions spell
 * it.
 *
 * @param options what to add to which positions
 * @param rules the rules to lift
 */
public record Admission(List<AddedOption> options, List<NeighbourRule> rules) {

  /** Copies the lists. */
  public Admission {
    options = List.copyOf(options);
    rules = List.copyOf(rules);
  }

  /**
   * What a study lacks to offer a structure; nothing when it does.
   *
   * @param objections what speaks against the structure in that study
   */
  public static Admission of(Study study, Structure structure, List<Objection> objections) {
    List<String> broken = objections.stream().map(Objection::rule).toList();
    return new Admission(
        AddedOption.smallest(structure, study.positions()),
        study.rules().stream().filter(rule -> broken.contains(rule.id())).toList());
  }
}
