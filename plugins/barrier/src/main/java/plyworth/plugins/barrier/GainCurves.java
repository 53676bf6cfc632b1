package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Text;

/** How the product moves towards its limit over time. */
final class GainCurves {

  private static final int STEPS = 60;

  /** How far the curves run past the shelf life of the brief. */
  private static final double HORIZON = 1.5;

  private GainCurves() {}

  /** One chart for every mechanism whose pack is known. */
  static List<Section> of(PackBarrier barrier) {
    return barrier.paths().stream()
        .filter(path -> !Double.isNaN(path.total()) && !Double.isNaN(path.days()))
        .map(path -> chart(barrier, path))
        .toList();
  }

  private static Section chart(PackBarrier barrier, PackBarrier.Path path) {
    Gain gain = Gain.of(barrier, path);
    double end = HORIZON * barrier.demand().days();
    List<Double> days = new ArrayList<>();
    List<Double> gains = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double share = (double) i / STEPS;
      days.add(end * share * share);
      gains.add(gain.after(end * share * share));
    }
    String word = path.mechanism().word();
    return new Curves(
        Text.of("curve." + word),
        Text.of("axis.days"),
        Text.of("axis." + word, gain.unit()),
        List.of(
            new Series(Text.of("series." + word), days, gains),
            new Series(
                Text.of("series.limit"), List.of(0.0, end), List.of(gain.limit(), gain.limit()))),
        Text.of("basis.curve." + word));
  }
}
