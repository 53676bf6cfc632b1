package plyworth.plugins.barrier.pack;

import java.util.Optional;
import plyworth.plugins.barrier.calibration.Evidence;
import plyworth.shared.scoring.Measurement;

/**
 * A figure measured on today's pack beside the one predicted without calibration.
 *
 * @param measurement what was measured
 * @param predicted the figure predicted, in the same unit; NaN when unknown
 * @param formed whether it is a figure of the formed pack, that damage and seal edge can explain
 * @param evidence what it says about them; empty when it says nothing, or they cannot explain it
 */
public record Comparison(
    Measurement measurement, double predicted, boolean formed, Optional<Evidence> evidence) {

  /** A ratio beyond this, either way, asks for a note (judgement). */
  static final double STRIKING = 3;

  /** Measured over predicted. */
  public double ratio() {
    return measurement.value() / predicted;
  }

  /** Whether the two differ so much that somebody should say why. */
  public boolean striking() {
    return ratio() > STRIKING || ratio() < 1 / STRIKING;
  }

  /** The criterion without the plugin before it. */
  String criterion() {
    return measurement.figure().substring(measurement.figure().indexOf('/') + 1);
  }
}
