package plyworth.shared.scoring;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a plugin says of one structure.
 *
 * @param outcomes one for every declared criterion, by criterion id
 * @param findings remarks, gravest first
 * @param provided every figure the plugin declares to provide; NaN when unknown
 */
public record Assessment(
    Map<String, Outcome> outcomes, List<Finding> findings, Map<Figure, Double> provided) {

  /** Copies, order kept. */
  public Assessment {
    outcomes = Collections.unmodifiableMap(new LinkedHashMap<>(outcomes));
    findings = findings.stream().sorted(java.util.Comparator.comparing(Finding::level)).toList();
    provided = Collections.unmodifiableMap(new LinkedHashMap<>(provided));
  }

  /** The figure of a criterion, NaN when it is unknown or not applicable. */
  public double figure(String criterionId) {
    return outcomes.get(criterionId).orUnknown();
  }

  /** Whether any finding blocks. */
  public boolean blocked() {
    return findings.stream().anyMatch(f -> f.level() == Finding.Level.BLOCKS);
  }
}
