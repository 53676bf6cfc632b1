package plyworth.shared.scoring;

/** Comparisons up to rounding. */
final class Nearly {

  private static final double SLACK = 1e-9;

  private Nearly() {}

  /** Equal within 1e-9 of the larger, both unknown, or the same infinity. */
  static boolean equal(double a, double b) {
    return Double.compare(a, b) == 0
        || Math.abs(a - b) <= SLACK * Math.max(Math.abs(a), Math.abs(b))
        || a == b;
  }

  static boolean equal(double[] a, double[] b) {
    for (int k = 0; k < a.length; k++) {
      if (!equal(a[k], b[k])) {
        return false;
      }
    }
    return true;
  }

  /** Whether [low, high] encloses a figure; an interval with an unknown end encloses anything. */
  static boolean encloses(double low, double high, double figure) {
    if (Double.isNaN(low) || Double.isNaN(high)) {
      return true;
    }
    return (figure >= low || equal(low, figure)) && (figure <= high || equal(high, figure));
  }
}
