package plyworth.plugins.barrier;

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

  boolean keeps(PackEnds ends) {
    return verdict.keeps(ends.largest(permeant)) && !Double.isNaN(ends.largest(with));
  }

  double atMost(PackEnds ends) {
    double most = ends.least(permeant);
    return mixed()
        ? balance.atMost(most, ends.least(with), ends.largest(with))
        : allowance >= 0 ? allowance / most : balance.atMost(most);
  }

  double atLeast(PackEnds ends) {
    double most = ends.largest(permeant);
    return mixed()
        ? balance.atLeast(most, ends.least(with), ends.largest(with))
        : allowance >= 0 ? allowance / most : balance.atLeast(most);
  }

  /** Whether a pack that fails must say of this very way, too, whether it is one. */
  boolean mixed() {
    return with != permeant;
  }
}
