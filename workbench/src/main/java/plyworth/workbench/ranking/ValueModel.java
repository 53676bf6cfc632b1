package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.host.BoundCriterion;

/**
 * An additive value model: what every criterion is worth, what it weighs, and what excludes.
 *
 * @param criteria every criterion, in the order of the table
 * @param limits limits that are checked
 * @param lost shares of weight given to criteria that no plugin offers, by full criterion id;
 *     shared out over the rest like that of criteria that do not apply
 * @param moot limits on criteria that do not apply or that no plugin offers; they are not checked
 */
public record ValueModel(
    List<Weighed> criteria, List<Limit> limits, Map<String, Double> lost, List<Limit> moot) {

  /** Copies. */
  public ValueModel {
    criteria = List.copyOf(criteria);
    limits = List.copyOf(limits);
    lost = Collections.unmodifiableMap(new TreeMap<>(lost));
    moot = List.copyOf(moot);
  }

  /** The model of a study under one of its weightings, or any other. */
  public static ValueModel of(List<BoundCriterion> criteria, Study study, Weighting weighting) {
    return of(criteria, weighting, study.valueFunctions(), study.limits());
  }

  /**
   * A model.
   *
   * @param functions value functions that differ from the plugin's, by full criterion id
   */
  public static ValueModel of(
      List<BoundCriterion> criteria,
      Weighting weighting,
      Map<String, ValueFunction> functions,
      List<Limit> limits) {
    double all = weighting.weights().values().stream().mapToDouble(w -> w).sum();
    double counting =
        criteria.stream()
            .filter(BoundCriterion::applies)
            .mapToDouble(c -> weighting.weight(c.id()))
            .sum();
    List<Weighed> weighed = new ArrayList<>();
    Map<String, Double> lost = new TreeMap<>(weighting.weights());
    for (BoundCriterion criterion : criteria) {
      double given = weighting.weight(criterion.id());
      lost.remove(criterion.id());
      weighed.add(
          new Weighed(
              criterion,
              functions.getOrDefault(criterion.id(), criterion.criterion().value()),
              share(given, all),
              criterion.applies() ? share(given, counting) : 0));
    }
    lost.values().removeIf(weight -> weight == 0);
    lost.replaceAll((id, weight) -> share(weight, all));
    List<Limit> checked = new ArrayList<>(limits);
    checked.removeIf(limit -> !checkable(limit, criteria));
    List<Limit> moot = new ArrayList<>(limits);
    moot.removeAll(checked);
    return new ValueModel(weighed, checked, lost, moot);
  }

  private static double share(double weight, double of) {
    return of > 0 ? weight / of : 0;
  }

  private static boolean checkable(Limit limit, List<BoundCriterion> criteria) {
    return criteria.stream().anyMatch(c -> c.id().equals(limit.criterion()) && c.applies());
  }

  /** Whether anything has weight; otherwise every value is 0. */
  public boolean weighted() {
    return criteria.stream().anyMatch(Weighed::counts);
  }

  /** Share of the asked weight that is shared out, because its criteria cannot count. */
  public double sharedOut() {
    double notApplicable =
        criteria.stream().filter(c -> !c.criterion().applies()).mapToDouble(Weighed::asked).sum();
    return notApplicable + lost.values().stream().mapToDouble(s -> s).sum();
  }

  /** The place of a criterion in {@link #criteria}; empty when no plugin offers it. */
  public Optional<Integer> indexOf(String criterionId) {
    for (int c = 0; c < criteria.size(); c++) {
      if (criteria.get(c).criterion().id().equals(criterionId)) {
        return Optional.of(c);
      }
    }
    return Optional.empty();
  }

  /**
   * The group of known figures.
   *
   * @param figures one for each criterion; NaN when unknown
   * @param blocked whether a plugin blocks it
   */
  public Group group(double[] figures, boolean blocked) {
    if (blocked) {
      return Group.BLOCKED;
    }
    Group group = Group.RANKED;
    for (Limit limit : limits) {
      double figure = figures[indexOf(limit.criterion()).orElseThrow()];
      if (Double.isNaN(figure)) {
        group = Group.CANNOT_BE_JUDGED;
      } else if (!limit.allows(figure)) {
        return Group.EXCLUDED;
      }
    }
    return group;
  }

  /** What the figures of a candidate are worth by its row in a table. */
  public Valuation value(CandidateTable table, long path) {
    Chunk chunk = table.chunkOf(path);
    int row = CandidateTable.rowOf(path);
    double[] low = new double[chunk.criteria()];
    double[] high = new double[chunk.criteria()];
    for (int c = 0; c < low.length; c++) {
      low[c] = chunk.has(c) ? chunk.low(c)[row] : Double.NaN;
      high[c] = chunk.has(c) ? chunk.high(c)[row] : Double.NaN;
    }
    return value(low, high);
  }

  /** What figures are worth; see the other. */
  public Valuation value(double[] figures) {
    return value(figures, figures);
  }

  /**
   * What bounded figures are worth.
   *
   * @param low lower ends, one for each criterion; NaN when unknown
   * @param high upper ends
   */
  public Valuation value(double[] low, double[] high) {
    List<Valuation.Part> parts = new ArrayList<>();
    for (int c = 0; c < criteria.size(); c++) {
      Weighed weighed = criteria.get(c);
      ValueCurve curve = new ValueCurve(weighed.value());
      parts.add(Valuation.Part.of(weighed.weight(), curve, low[c], high[c]));
    }
    return Valuation.of(parts);
  }
}
