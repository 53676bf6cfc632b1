package plyworth.workbench.desktop.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.scoring.Text;
import plyworth.shared.study.LogNormal;
import plyworth.workbench.analysis.ResultsReview;
import plyworth.workbench.desktop.word.UnitText;

/**
 * What is believed of a figure before it was measured, what was read, and what is believed after:
 * three normal densities of the logarithm, each scaled to its own height. What is certain is drawn
 * as a line upright.
 */
final class EstimateCurves {

  private static final int POINTS = 160;

  /** How far a curve is drawn, in its own standard deviations. */
  private static final double REACH = 3.5;

  /** Narrower than any curve that can be told from a line. */
  private static final double CERTAIN = 1e-4;

  private EstimateCurves() {}

  /** The curves; empty where the figure was unknown before and is 0 after. */
  static Explanation.Curves of(ResultsReview.Moved moved) {
    List<LogNormal> beliefs = new ArrayList<>();
    List<String> names = new ArrayList<>();
    prior(moved.before())
        .ifPresent(
            prior -> {
              beliefs.add(prior);
              names.add("estimate.before");
            });
    beliefs.add(readings(moved.readings()));
    names.add("estimate.read");
    prior(moved.after())
        .ifPresent(
            after -> {
              beliefs.add(after);
              names.add("estimate.after");
            });
    double from = Math.exp(beliefs.stream().mapToDouble(b -> end(b, -1)).min().orElseThrow());
    double to = Math.exp(beliefs.stream().mapToDouble(b -> end(b, 1)).max().orElseThrow());
    List<Explanation.Series> series = new ArrayList<>();
    for (int i = 0; i < beliefs.size(); i++) {
      series.add(curve(names.get(i), beliefs.get(i), from, to));
    }
    return new Explanation.Curves(
        Text.of("estimate.title", moved.material(), moved.property()),
        Text.of("estimate.axis", moved.property(), UnitText.of(moved.unit())),
        Text.of("estimate.density"),
        series,
        Text.of("estimate.basis"));
  }

  /** All readings taken together. */
  private static LogNormal readings(List<Measurement> readings) {
    return readings.stream()
        .map(reading -> LogNormal.reading(reading.value(), reading.spread()))
        .reduce(LogNormal::after)
        .orElseThrow();
  }

  private static Optional<LogNormal> prior(Range range) {
    return range.known() && range.low() > 0 ? Optional.of(LogNormal.of(range)) : Optional.empty();
  }

  private static double end(LogNormal belief, int side) {
    return belief.mean() + side * Math.max(CERTAIN, REACH * belief.deviation());
  }

  private static Explanation.Series curve(String name, LogNormal belief, double from, double to) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    if (belief.deviation() < CERTAIN) {
      double at = Math.exp(belief.mean());
      x.addAll(List.of(at, at));
      y.addAll(List.of(0.0, 1.0));
    } else {
      for (int i = 0; i <= POINTS; i++) {
        double at = from + (to - from) * i / POINTS;
        double steps = (Math.log(at) - belief.mean()) / belief.deviation();
        x.add(at);
        y.add(Math.exp(-steps * steps / 2));
      }
    }
    return new Explanation.Series(Text.of(name), x, y);
  }
}
