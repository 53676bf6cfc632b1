package plyworth.plugins.machinability;

/** Dwell and jaw temperatures from the warming of the seal interface. */
final class Sealing {

  /** Dwell that stands for a seal that is never made, s. */
  static final double NEVER_S = 10;

  /** Jaw temperature that stands for one that no jaw can have, °C. */
  static final double BEYOND_JAWS_C = 1000;

  /** Seal initiation that stands for a layer that does not seal at all, °C. */
  static final double NO_SEALANT_C = 10_000;

  private final Settings settings;

  Sealing(Settings settings) {
    this.settings = settings;
  }

  /** Temperature the interface must reach, °C. */
  double target(double initiation) {
    return initiation + settings.marginK();
  }

  /** Whether the jaws, however long they stay shut, cannot bring the interface there. */
  boolean never(double initiation) {
    double target = target(initiation);
    return target > settings.startC() && target >= settings.machine().jawC();
  }

  /** Share of the temperature step that may be missing when the interface is at the target. */
  double missing(double initiation) {
    double jaw = settings.machine().jawC();
    double target = target(initiation);
    return target <= settings.startC() ? 1 : (jaw - target) / (jaw - settings.startC());
  }

  /** Dwell to bring the interface to the target, s; at most {@link #NEVER_S}. */
  double dwell(HeatingCurve curve, double initiation) {
    return dwell(initiation, curve.time(missing(initiation)));
  }

  /** The same from the time that the curve takes. */
  double dwell(double initiation, double time) {
    return never(initiation) ? NEVER_S : Math.min(NEVER_S, time);
  }

  /**
   * Jaw temperature that brings the interface to a temperature when {@code remaining} of the step
   * is still missing: T₀ + (T − T₀)/(1 − θ), °C; at most {@link #BEYOND_JAWS_C}.
   */
  double jawFor(double temperature, double remaining) {
    double start = settings.startC();
    return temperature <= start
        ? start
        : Math.min(BEYOND_JAWS_C, start + (temperature - start) / Math.max(0, 1 - remaining));
  }

  /** Hottest jaws that neither the outside nor the thinnest place of the seal suffers from, °C. */
  double hottest(double faceLimit, double upperSealLimit, double remainingPlain) {
    return Math.min(faceLimit, jawFor(upperSealLimit, remainingPlain));
  }

  /** What is left between the coolest and the hottest jaws after their own spread, K. */
  double window(double coolest, double hottest) {
    double width = hottest - coolest - settings.machine().jawSpreadK();
    return Math.max(-BEYOND_JAWS_C, width);
  }
}
