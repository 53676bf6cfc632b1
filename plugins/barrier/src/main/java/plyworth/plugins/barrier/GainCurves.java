package plyworth.plugins.barrier;

import java.util.List;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Text;

/** How the product moves towards its limit over time. */
final class GainCurves {

  /** How far the curves run past the shelf life of the brief. */
  private static final double HORIZON = 1.5;

  private GainCurves() {}

  /** One chart for every mechanism whose pack is known. */
  static List<Section> of(PackBarrier barrier, PackConductance pack) {
    return barrier.paths().stream()
        .filter(path -> !Double.isNaN(path.total()) && !Double.isNaN(path.days()))
        .map(path -> chart(barrier, path, pack))
        .toList();
  }

  private static Section chart(PackBarrier barrier, PackBarrier.Path path, PackConductance pack) {
    double end = HORIZON * barrier.demand().days();
    Course course = path.mechanism().balance().course(pack, end);
    String word = path.mechanism().word();
    return new Curves(
        Text.of("curve." + word),
        Text.of("axis.days"),
        Text.of("axis." + word, course.unit()),
        List.of(
            new Series(Text.of("series." + word), course.days(), course.amounts()),
            new Series(
                Text.of("series.limit"),
                List.of(0.0, end),
                List.of(course.limit(), course.limit()))),
        Text.of("basis.curve." + word));
  }
}
