package plyworth.plugins.machinability;

import static plyworth.plugins.machinability.MachinabilityLayerwise.ATTACKS;
import static plyworth.plugins.machinability.MachinabilityLayerwise.FACE_LIMIT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.HEAT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.INITIATION;
import static plyworth.plugins.machinability.MachinabilityLayerwise.INNER_ATTACKS;
import static plyworth.plugins.machinability.MachinabilityLayerwise.SEALANT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.UPPER_LIMIT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.WEB_LIMIT;

/**
 * The laminates that a {@link Judge} judges together, {@link SeriesColumns#ROWS} at most, in
 * columns: what {@link LaminateState} and {@link Verdict} hold for one. Rows beyond those read hold
 * what is left over; they cost time and matter to nobody.
 */
final class SealTile {

  private static final int ROWS = SeriesColumns.ROWS;

  final Walls web = Walls.room();
  final double[] initiation = new double[ROWS];
  final double[] upperLimit = new double[ROWS];
  final double[] faceLimit = new double[ROWS];
  final double[] sealantUm = new double[ROWS];
  final long[] attacks = new long[ROWS];

  final double[] dwell = new double[ROWS];
  final double[] coolest = new double[ROWS];
  final double[] hottest = new double[ROWS];
  final double[] window = new double[ROWS];
  final double[] packs = new double[ROWS];
  final double[] attackClass = new double[ROWS];
  final long[] blocked = new long[ROWS];

  final SealStack stack = new SealStack();
  final HeatingCurves curves = new HeatingCurves();
  final HeatingCurves plainCurves = new HeatingCurves();
  final double[] missing = new double[ROWS];
  final double[] time = new double[ROWS];
  final double[] remaining = new double[ROWS];
  final double[] remainingPlain = new double[ROWS];

  /** Takes {@code count} joined states that begin at one. */
  void read(double[][] states, int from, int count) {
    web.read(states, HEAT, from, count);
    System.arraycopy(states[INITIATION], from, initiation, 0, count);
    System.arraycopy(states[UPPER_LIMIT], from, upperLimit, 0, count);
    System.arraycopy(states[SEALANT + 2], from, sealantUm, 0, count);
    double[] face = states[FACE_LIMIT];
    double[] webLimit = states[WEB_LIMIT];
    double[] any = states[ATTACKS];
    double[] inner = states[INNER_ATTACKS];
    for (int i = 0; i < count; i++) {
      double limit = webLimit[from + i];
      boolean noWeb = limit == Double.NEGATIVE_INFINITY;
      faceLimit[i] = Math.min(face[from + i], noWeb ? Double.POSITIVE_INFINITY : limit);
      attacks[i] = (long) any[from + i] | (long) inner[from + i];
    }
  }

  /** Takes one state into the first row. */
  void put(LaminateState state) {
    web.put(0, state.wall());
    initiation[0] = state.initiation();
    upperLimit[0] = state.upperLimit();
    faceLimit[0] = state.faceLimit();
    sealantUm[0] = state.sealantUm();
    attacks[0] = state.attacks();
  }

  /** The figures of a row. */
  Verdict verdict(int row) {
    return new Verdict(
        dwell[row],
        coolest[row],
        hottest[row],
        window[row],
        packs[row],
        (int) attackClass[row],
        blocked[row]);
  }
}
