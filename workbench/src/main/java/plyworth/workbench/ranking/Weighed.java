package plyworth.workbench.ranking;

import plyworth.shared.scoring.ValueFunction;
import plyworth.workbench.host.BoundCriterion;

/**
 * A criterion with its value function and weight.
 *
 * @param criterion the criterion
 * @param value the study's value function, or the plugin's
 * @param asked its share of all weight that the weighting gives, 0 to 1
 * @param weight its share once the weight of what cannot count is shared out in proportion over the
 *     rest; 0 when it does not apply
 */
public record Weighed(BoundCriterion criterion, ValueFunction value, double asked, double weight) {

  /** Whether it has weight. */
  public boolean counts() {
    return weight > 0;
  }
}
