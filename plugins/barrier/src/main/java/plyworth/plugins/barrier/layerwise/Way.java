package plyworth.plugins.barrier.layerwise;

import plyworth.plugins.barrier.course.Balance;

/**
 * A mechanism, prepared to be followed through many packs.
 *
 * @param permeant index of what passes
 * @param with index of what passes along with it; itself when nothing does
 * @param tooMuchBefore days before which too much is lost; 0 when that is not asked
 * @param allowance days times conductance; NaN where that is no constant
 */
record Way(
    Balance balance,
    int permeant,
    int with,
    double tooMuchBefore,
    double allowance,
    Verdict verdict) {

  /** Writes the fewest and most days that packs may keep, those beyond the cap as infinite. */
  void days(OpenPacks packs, double[] fewest, double[] most) {
    if (allowance >= 0) {
      over(packs.largest(permeant), packs.many(), fewest);
      over(packs.least(permeant), packs.many(), most);
    } else {
      for (int i = 0; i < packs.many(); i++) {
        boolean keeps = keeps(packs, i);
        fewest[i] = keeps ? Double.POSITIVE_INFINITY : atLeast(packs, i);
        most[i] = keeps ? Double.POSITIVE_INFINITY : atMost(packs, i);
      }
    }
  }

  private void over(double[] conductances, int many, double[] days) {
    for (int i = 0; i < many; i++) {
      days[i] = allowance / conductances[i];
    }
  }

  private boolean keeps(OpenPacks packs, int i) {
    return verdict.keeps(packs.largest(permeant)[i]) && !Double.isNaN(packs.largest(with)[i]);
  }

  private double atMost(OpenPacks packs, int i) {
    double least = packs.least(permeant)[i];
    return mixed()
        ? balance.atMost(least, packs.least(with)[i], packs.largest(with)[i])
        : balance.atMost(least);
  }

  private double atLeast(OpenPacks packs, int i) {
    double most = packs.largest(permeant)[i];
    return mixed()
        ? balance.atLeast(most, packs.least(with)[i], packs.largest(with)[i])
        : balance.atLeast(most);
  }

  /** Whether a pack that fails must say of this very way, too, whether it is one. */
  boolean mixed() {
    return with != permeant;
  }
}
