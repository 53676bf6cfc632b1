package plyworth.workbench.analysis;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.study.Limit;
import plyworth.workbench.ranking.ValueModel;

/** One thing that keeps a structure out of a ranking. */
public sealed interface Hindrance {

  /** What it is, in short: {@code plugin/rule}, a limit, or what is missing. */
  String name();

  /**
   * A plugin blocks it.
   *
   * @param remark the finding that does
   */
  record Block(Sheet.Remark remark) implements Hindrance {
    @Override
    public String name() {
      return remark.plugin() + "/" + remark.finding().rule();
    }
  }

  /**
   * A figure does not keep to a limit.
   *
   * @param limit the limit
   * @param figure the figure, in the unit of the criterion
   */
  record BrokenLimit(Limit limit, double figure) implements Hindrance {
    @Override
    public String name() {
      return "the limit on " + limit.criterion();
    }

    /**
     * The tightest limit of so many significant digits that the figure keeps to: rounded to the
     * side that is allowed.
     */
    public double relaxed(int digits) {
      RoundingMode outward =
          limit.bound() == Limit.Bound.AT_MOST ? RoundingMode.CEILING : RoundingMode.FLOOR;
      return new BigDecimal(figure).round(new MathContext(digits, outward)).doubleValue();
    }
  }

  /**
   * A limit concerns a figure that is unknown.
   *
   * @param limit the limit
   * @param missing what is missing to judge it
   */
  record UnknownFigure(Limit limit, Outcome.DataMissing missing) implements Hindrance {
    @Override
    public String name() {
      return missing.subject() + " has no " + missing.property();
    }
  }

  /** All that keeps a structure out: blocks, then limits; empty when it can be ranked. */
  static List<Hindrance> of(Sheet sheet, ValueModel model) {
    List<Hindrance> found = new ArrayList<>();
    for (Sheet.Remark remark : sheet.remarks()) {
      if (remark.finding().level() == Finding.Level.BLOCKS) {
        found.add(new Block(remark));
      }
    }
    for (Limit limit : model.limits()) {
      Outcome outcome = sheet.outcomes().get(model.indexOf(limit.criterion()).orElseThrow());
      if (outcome instanceof Outcome.DataMissing missing) {
        found.add(new UnknownFigure(limit, missing));
      } else if (!limit.allows(outcome.orUnknown())) {
        found.add(new BrokenLimit(limit, outcome.orUnknown()));
      }
    }
    return List.copyOf(found);
  }
}
