package plyworth.plugins.machinability;

import java.util.Arrays;
import plyworth.shared.brief.Machine.SealZone;

/** One of the {@link HeatingCurves}: how the seal interface of one laminate warms up. */
final class HeatingCurve {

  private final HeatingCurves curves = new HeatingCurves();
  private final double[] given = new double[SeriesColumns.ROWS];
  private final double[] found = new double[SeriesColumns.ROWS];

  private HeatingCurve() {}

  /** The curve of a laminate in a zone; arguments as in {@link SealStack#pile}. */
  static HeatingCurve of(Wall web, double contact, SealZone zone, boolean sameWay) {
    Walls walls = Walls.room();
    walls.put(0, web);
    HeatingCurve curve = new HeatingCurve();
    curve.curves.fit(new SealStack().pile(walls, contact, zone, sameWay));
    return curve;
  }

  /** Slowest rate, 1/s; NaN when the laminate is not known. */
  double slowest() {
    return curves.slowest(0);
  }

  /** Share of the step still missing at a time, 0 to 1. */
  double remaining(double time) {
    curves.remaining(time, found);
    return found[0];
  }

  /** Time until only {@code share} of the step is missing, s; 0 when none is needed. */
  double time(double share) {
    Arrays.fill(given, share);
    curves.time(given, found);
    return found[0];
  }
}
