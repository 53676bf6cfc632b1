package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.material.Property;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.CandidateResult;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Study;

/**
 * What the results of a study came to: how they moved the figures of materials, and how far
 * candidates are from what was predicted of them.
 *
 * @param materials each property that was measured, at each place that it was measured at
 * @param candidates each reading of a candidate
 */
public record ResultsReview(List<Moved> materials, List<Compared> candidates) {

  /** Draws behind the range of a prediction. */
  private static final int DRAWS = 200;

  /**
   * A figure of a material.
   *
   * @param at gauge or humidity it holds for; NaN when it holds always
   * @param before the figure before it was measured; unknown when there was none
   * @param readings what was read, in the order of the study
   * @param after the figure that the study reckons with
   */
  public record Moved(
      String material,
      String property,
      String unit,
      double at,
      Range before,
      List<Measurement> readings,
      Range after) {}

  /**
   * A reading of a candidate beside its prediction.
   *
   * @param predicted the middle 90 % of what the plugins predict, after all corrections
   */
  public record Compared(Structure structure, Measurement reading, Range predicted) {

    /** What was read over what was predicted; NaN when nothing is predicted. */
    public double ratio() {
      return reading.value() / predicted.typical();
    }

    /** Whether what was read, with its spread, meets what was predicted; empty when unknown. */
    public Optional<Boolean> agrees() {
      return predicted.known()
          ? Optional.of(
              reading.value() * reading.spread() >= predicted.low()
                  && reading.value() / reading.spread() <= predicted.high())
          : Optional.empty();
    }
  }

  /** The results of a study that is bound. */
  public static ResultsReview of(Prepared prepared) {
    Study study = prepared.study();
    return new ResultsReview(materials(study), candidates(prepared, study.results().candidates()));
  }

  /** How the results of a study moved the figures of materials. */
  public static List<Moved> materials(Study study) {
    Map<List<Object>, Moved> moved = new LinkedHashMap<>();
    for (MaterialResult result : study.results().materials()) {
      Property after = after(study, result);
      List<Object> place = List.of(result.material(), result.property(), result.at());
      moved.computeIfAbsent(
          place,
          first ->
              new Moved(
                  result.material(),
                  result.property(),
                  after.unit(),
                  result.at(),
                  study
                      .materialsBefore()
                      .require(result.material())
                      .figure(result.property(), result.at()),
                  readings(study, result),
                  after.at(result.at())));
    }
    return List.copyOf(moved.values());
  }

  private static Property after(Study study, MaterialResult result) {
    return study
        .materialsAtHand()
        .require(result.material())
        .property(result.property())
        .orElseThrow();
  }

  private static List<Measurement> readings(Study study, MaterialResult like) {
    return study.results().of(like.material(), like.property()).stream()
        .filter(result -> Double.compare(result.at(), like.at()) == 0)
        .map(MaterialResult::reading)
        .toList();
  }

  /** Readings of candidates beside what is predicted of them. */
  public static List<Compared> candidates(Prepared prepared, List<CandidateResult> results) {
    Study study = prepared.study();
    List<Compared> compared = new ArrayList<>();
    Map<Structure, Map<String, Range>> predicted = new LinkedHashMap<>();
    for (CandidateResult result : results) {
      Map<String, Range> ranges =
          predicted.computeIfAbsent(
              result.structure(), s -> Ranges.of(prepared, s, DRAWS, study.seed()));
      Range range = ranges.getOrDefault(result.reading().figure(), Range.UNKNOWN);
      compared.add(new Compared(result.structure(), result.reading(), range));
    }
    return List.copyOf(compared);
  }
}
