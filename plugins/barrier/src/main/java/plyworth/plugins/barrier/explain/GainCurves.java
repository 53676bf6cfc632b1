package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.course.Course;
import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.course.MoistureBalance;
import plyworth.plugins.barrier.course.MoistureCourse;
import plyworth.plugins.barrier.course.OxygenBalance;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Text;

/** How the product moves towards its limit over time. */
final class GainCurves {

  /** How far the curves run past the shelf life of the brief. */
  private static final double HORIZON = 1.5;

  private final double asked;
  private final double end;
  private final PackConductance pack;
  private final List<Section> charts = new ArrayList<>();

  private GainCurves(double asked, PackConductance pack) {
    this.asked = asked;
    this.end = HORIZON * asked;
    this.pack = pack;
  }

  /** The charts of every mechanism whose pack is known. */
  static List<Section> of(PackBarrier barrier, PackConductance pack) {
    GainCurves curves = new GainCurves(barrier.demand().days(), pack);
    barrier.paths().stream()
        .filter(path -> !Double.isNaN(path.total()) && !Double.isNaN(path.days()))
        .forEach(path -> curves.charts(path.mechanism()));
    return curves.charts;
  }

  private void charts(Mechanism mechanism) {
    String word = mechanism.word();
    Course course = mechanism.balance().course(pack, end);
    chart(word, Text.of("axis." + word, course.unit()), course);
    if (mechanism.balance() instanceof MoistureBalance moisture) {
      chart(
          "activity", Text.of("axis.activity"), MoistureCourse.of(moisture, pack, end).activity());
    }
    if (mechanism.balance() instanceof OxygenBalance oxygen && oxygen.headspace().holdsGas()) {
      headspace(oxygen);
    }
  }

  private void chart(String word, Text axis, Course course) {
    charts.add(
        new Curves(
            Text.of("curve." + word),
            Text.of("axis.days"),
            axis,
            List.of(
                new Series(Text.of("series." + word), course.days(), course.amounts()),
                line("series.limit", course.limit()),
                asked(course)),
            Text.of("basis.curve." + word)));
  }

  /** The two limit cases, and what lies between them when the product is slow. */
  private void headspace(OxygenBalance oxygen) {
    double[] conductances = oxygen.conductances(pack);
    Course untouched = oxygen.headspace().untouched().percent(conductances, end);
    List<Series> series = new ArrayList<>();
    series.add(new Series(Text.of("series.untouched"), untouched.days(), untouched.amounts()));
    if (!oxygen.headspace().atOnce()) {
      Course slow = oxygen.headspace().percent(conductances, end);
      series.add(new Series(Text.of("series.slow"), slow.days(), slow.amounts()));
    }
    series.add(line("series.consumed", 0));
    charts.add(
        new Curves(
            Text.of("curve.headspace"),
            Text.of("axis.days"),
            Text.of("axis.headspace"),
            series,
            Text.of("basis.curve.headspace")));
  }

  private Series line(String key, double height) {
    return new Series(Text.of(key), List.of(0.0, end), List.of(height, height));
  }

  /** An upright line at the shelf life asked for. */
  private Series asked(Course course) {
    double foot = course.amounts().get(0);
    return new Series(
        Text.of("series.asked"), List.of(asked, asked), List.of(foot, course.limit()));
  }
}
