package plyworth.plugins.barrier.course;

import java.util.Arrays;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Climate.Season;

/**
 * The conductance of a pack to water along the activity inside, read off once at evenly spaced
 * activities and straight between them, so that following the product does not solve the laminate
 * at every step. Straight lines never leave the range of what was read off.
 *
 * @param from first activity
 * @param to last activity, not below the first
 * @param figures conductance at each, g/(day·Pa); a single one when it does not change
 */
record SampledConductance(double from, double to, double[] figures) {

  private static final int NODES = 9;

  /** The conductance of a pack in a season; equal at both ends, it does not change between. */
  static SampledConductance of(PackConductance pack, Season season, double from, double to) {
    double first = pack.at(Permeant.WATER, season, from);
    if (first == pack.at(Permeant.WATER, season, to)) {
      return new SampledConductance(from, to, new double[] {first});
    }
    double[] figures = new double[NODES];
    Arrays.setAll(
        figures, i -> pack.at(Permeant.WATER, season, from + (to - from) * i / (NODES - 1)));
    return new SampledConductance(from, to, figures);
  }

  /** Whether the activity inside does not matter. */
  boolean constant() {
    return figures.length == 1;
  }

  /** Conductance at an activity. */
  double at(double activity) {
    if (constant()) {
      return figures[0];
    }
    double place = (activity - from) / (to - from) * (figures.length - 1);
    int node = (int) Math.max(0, Math.min(figures.length - 2, Math.floor(place)));
    double share = Math.max(0, Math.min(1, place - node));
    return figures[node] + share * (figures[node + 1] - figures[node]);
  }
}
