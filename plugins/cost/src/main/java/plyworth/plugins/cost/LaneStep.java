package plyworth.plugins.cost;

import java.util.Optional;
import plyworth.shared.brief.Brief;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Text;

/** Lanes are whole: a lane that just does not fit costs film on every pack (analytic). */
final class LaneStep {

  private static final double WORTH_ASKING_MM = 1;

  private LaneStep() {}

  /** A finding when a lane narrower by at most 1 mm would fit once more across the web. */
  static Optional<Finding> finding(Brief brief) {
    int lanes = brief.lanesAcrossWeb();
    double usable = brief.order().motherWebMm() - 2 * brief.order().edgeTrimMm();
    double lane = brief.pack().laneWidthMm();
    double tooWideMm = lane - usable / (lanes + 1);
    if (tooWideMm > WORTH_ASKING_MM) {
      return Optional.empty();
    }
    double saved = 100 - 100.0 * lanes / (lanes + 1);
    return Optional.of(
        new Finding(
            Finding.Level.INFORMS,
            "lane-step",
            Text.of("finding.lane-step", lane, tooWideMm, lanes, lanes + 1, saved),
            "arithmetic: lanes are the whole part of usable web / lane width"));
  }
}
