package plyworth.shared.scoring;

import java.util.Map;
import java.util.Optional;
import plyworth.shared.structure.Structure;

/** A plugin bound to one brief, library, set of parameters and draw. Safe from several threads. */
public interface Scorer {

  /**
   * Criteria that do not apply to this brief at all, by criterion id, each with the reason. Their
   * weight is shared out visibly.
   */
  Map<String, Text> notApplicable();

  /**
   * Scores one structure, whatever it looks like.
   *
   * @param needed figures of other plugins; those that are not available are absent, those that
   *     their provider does not know are NaN
   */
  Assessment score(Structure structure, Map<Figure, Double> needed);

  /** The breakdown behind {@link #score} of the same arguments. */
  Explanation explain(Structure structure, Map<Figure, Double> needed);

  /**
   * The form for millions of candidates; empty when the plugin has none. Making it may take a
   * while: a host asks once and keeps it.
   */
  Optional<Layerwise> layerwise();
}
