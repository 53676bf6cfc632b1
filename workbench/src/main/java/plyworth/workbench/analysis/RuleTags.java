package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Spelling;
import plyworth.shared.material.Material;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.structure.KindExpression;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.study.Study;

/**
 * Checks that the tags in neighbour rules exist: a rule with a misspelt tag forbids nothing, or
 * everything, and nobody would notice.
 */
final class RuleTags {

  private final Set<String> known = new TreeSet<>();

  private RuleTags(Study study) {
    for (Material material : study.materialsAtHand().all()) {
      known.add(material.id());
      known.add(material.family());
      known.addAll(material.kinds());
    }
    study.processesAtHand().processes().keySet().forEach(id -> known.add("@" + id));
    for (ProcessRole role : ProcessRole.values()) {
      known.add(Choice.plain(role));
    }
  }

  static List<References.Dangling> check(Study study) {
    RuleTags tags = new RuleTags(study);
    List<References.Dangling> found = new ArrayList<>();
    for (int i = 0; i < study.rules().size(); i++) {
      String path = "rules[" + i + "].";
      expressions(study.rules().get(i))
          .forEach((key, expression) -> tags.check(path + key, expression, found));
    }
    return found;
  }

  private void check(String path, KindExpression expression, List<References.Dangling> found) {
    for (String tag : expression.tags()) {
      if (!known.contains(tag)) {
        String remedy = Spelling.suggestion(tag, known);
        found.add(
            new References.Dangling(
                path,
                Optional.empty(),
                "\"" + tag + "\" is neither a kind, family or id of a material nor a process",
                remedy.isEmpty() ? "Mend it, or carry such a material in the study." : remedy));
      }
    }
  }

  private static Map<String, KindExpression> expressions(NeighbourRule rule) {
    Map<String, KindExpression> byKey = new LinkedHashMap<>();
    if (rule instanceof NeighbourRule.Neighbours r) {
      byKey.put("outer", r.outer());
      byKey.put("inner", r.inner());
    } else if (rule instanceof NeighbourRule.Face r) {
      byKey.put("outer", r.outer());
      byKey.put("inner", r.inner());
    } else if (rule instanceof NeighbourRule.WebBondWeb r) {
      byKey.put("outer", r.outer());
      if (r.bond() != null) {
        byKey.put("bond", r.bond());
      }
      byKey.put("inner", r.inner());
    } else if (rule instanceof NeighbourRule.Outermost r) {
      byKey.put("only", r.only());
    } else if (rule instanceof NeighbourRule.Innermost r) {
      byKey.put("only", r.only());
    } else if (rule instanceof NeighbourRule.AtMost r) {
      byKey.put("kind", r.kind());
    } else if (rule instanceof NeighbourRule.AtLeast r) {
      byKey.put("kind", r.kind());
    }
    return byKey;
  }
}
