package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.Study;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;

/**
 * What was measured on today's pack beside what is predicted of it, and which figures each
 * measurement corrects. What corrects is found by asking: the plugins are bound with the
 * measurement and without, and what they then say of today's pack is compared. So it holds for any
 * plugin.
 *
 * @param lines one for each measurement, in the order of the study
 */
public record TodayReview(List<Line> lines) {

  /** Nothing was measured. */
  public static final TodayReview NONE = new TodayReview(List.of());

  /** Beyond this ratio either way a measurement asks for a remark (judgement). */
  private static final double STRIKING = 3;

  /** Another measurement than the one at hand; one that moves a figure is at work. */
  private static final double OTHERWISE = 1.02;

  private static final double SAME = 1e-9;

  /**
   * A measurement.
   *
   * @param criterion what it is the true figure of; empty when no plugin at work measures that
   * @param predicted the figure predicted without any measurement; NaN when it is unknown
   * @param calibrated the figure predicted with all of them; NaN when it is unknown
   * @param corrects full ids of the criteria that it corrects, in order
   */
  public record Line(
      Measurement measurement,
      Optional<BoundCriterion> criterion,
      double predicted,
      double calibrated,
      Set<String> corrects) {

    /** What was measured over what was predicted; NaN when nothing is predicted. */
    public double ratio() {
      return measurement.value() / predicted;
    }

    /** Whether the two are so far apart that the reason should be said, and it is not. */
    public boolean wantsNote() {
      double ratio = ratio();
      boolean striking = ratio > STRIKING || ratio < 1 / STRIKING;
      return striking && measurement.note().isBlank();
    }
  }

  /** Copies the list. */
  public TodayReview {
    lines = List.copyOf(lines);
  }

  /** Compares the measurements of a study that is bound. */
  public static TodayReview of(Prepared prepared) {
    List<Measurement> measured = prepared.study().measurements();
    if (measured.isEmpty()) {
      return NONE;
    }
    double[] without = figures(prepared, List.of());
    double[] with = figures(prepared, measured);
    List<Line> lines = new ArrayList<>();
    for (Measurement measurement : measured) {
      Optional<BoundCriterion> criterion = prepared.bound().criterion(measurement.figure());
      int place = criterion.map(prepared.bound().criteria()::indexOf).orElse(-1);
      lines.add(
          new Line(
              measurement,
              criterion,
              place < 0 ? Double.NaN : without[place],
              place < 0 ? Double.NaN : with[place],
              corrected(prepared, measurement, without)));
    }
    return new TodayReview(lines);
  }

  /** One that says exactly what is predicted moves nothing, and is told by what another would. */
  private static Set<String> corrected(
      Prepared prepared, Measurement measurement, double[] without) {
    double[] alone = figures(prepared, List.of(measurement));
    double[] otherwise = figures(prepared, List.of(times(measurement, OTHERWISE)));
    Set<String> corrected = new TreeSet<>();
    List<BoundCriterion> criteria = prepared.bound().criteria();
    for (int c = 0; c < criteria.size(); c++) {
      if (differ(without[c], alone[c]) || differ(alone[c], otherwise[c])) {
        corrected.add(criteria.get(c).id());
      }
    }
    return corrected;
  }

  private static boolean differ(double a, double b) {
    boolean equal = Double.compare(a, b) == 0 || Math.abs(a - b) <= SAME * Math.abs(a);
    return !equal;
  }

  private static Measurement times(Measurement m, double factor) {
    return new Measurement(
        m.figure(),
        factor * m.value(),
        m.unit(),
        m.spread(),
        m.samples(),
        m.method(),
        m.date(),
        m.note());
  }

  /** What is said of today's pack when these are measured. */
  private static double[] figures(Prepared prepared, List<Measurement> measured) {
    Study study = prepared.study().withMeasurements(measured);
    BoundPlugins bound = BoundPlugins.bind(prepared.catalog(), study, Draw.TYPICAL);
    return bound.figures(bound.score(study.baseline()));
  }

  /** The criteria that some measurement corrects, in order. */
  public Set<String> calibrated() {
    Set<String> calibrated = new TreeSet<>();
    lines.forEach(line -> calibrated.addAll(line.corrects()));
    return calibrated;
  }

  /** The measurements that correct something. */
  public List<Line> correcting() {
    return lines.stream().filter(line -> !line.corrects().isEmpty()).toList();
  }
}
