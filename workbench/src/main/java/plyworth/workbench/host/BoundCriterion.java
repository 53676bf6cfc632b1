package plyworth.workbench.host;

import java.util.Optional;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Text;

/**
 * A criterion as it stands in one study.
 *
 * @param id full id, {@code plugin/criterion}
 * @param criterion its declaration
 * @param plugin index of its plugin in {@link BoundPlugins#plugins}
 * @param index index among the plugin's criteria
 * @param notApplicable why it does not apply to this brief; empty when it does
 */
public record BoundCriterion(
    String id, Criterion criterion, int plugin, int index, Optional<Text> notApplicable) {

  /** Whether it applies to the brief. */
  public boolean applies() {
    return notApplicable.isEmpty();
  }
}
