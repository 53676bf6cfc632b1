package plyworth.plugins.barrier.pack;

import plyworth.shared.brief.Pack;
import plyworth.shared.structure.Structure;

/**
 * How likely the seals of a pack leak, as a class: whether the sealant can flow into what keeps the
 * webs apart. Where the lap or fin of a pack runs into its end seals, the other webs bridge a step
 * as high as the plies that end there; elsewhere dust of the product and wrinkles stand for one of
 * {@value #WRINKLE_UM} µm. The sealant of both webs fills it in part; the rest is left to pressure
 * and to webs that give way (common practice; the figures are judgement).
 *
 * @param stepUm height of the step, µm
 * @param sealantUm gauge of the innermost layer, µm
 */
public record LeakRisk(double stepUm, double sealantUm) {

  /** Class of a step that the sealant fills by less than a quarter. */
  public static final int LIKELY = 0;

  /** Class of a step that the sealant fills by a quarter or more. */
  public static final int POSSIBLE = 1;

  /** Class of a step that the sealant fills by half or more. */
  public static final int UNLIKELY = 2;

  private static final double WRINKLE_UM = 40;

  /** Share of the step that the sealant fills, from which a leak is unlikely, or just possible. */
  private static final double FILLED = 0.5;

  private static final double PARTLY_FILLED = 0.25;

  /** So that rounding never moves a class. */
  private static final double ROUNDING = 1e-9;

  /** The risk of a pack of one format. */
  public static LeakRisk of(Pack.Format format, double laminateUm, double sealantUm) {
    return new LeakRisk(Math.max(WRINKLE_UM, pliesOfStep(format) * laminateUm), sealantUm);
  }

  /** The risk of a structure made into the pack of the brief. */
  public static LeakRisk of(BarrierModel model, Structure structure) {
    return of(
        model.context().brief().pack().format(),
        structure.layers().stream().mapToDouble(model.context()::gaugeUm).sum(),
        model.context().gaugeUm(structure.innermost()));
  }

  /** Plies that end under the others where seals cross. */
  private static int pliesOfStep(Pack.Format format) {
    return switch (format) {
      case STICK -> 1;
      case PILLOW -> 2;
      case SACHET_FOUR_SIDE, SACHET_FOLDED -> 0;
    };
  }

  /** Share of the step that the sealant of both webs fills. */
  public double filled() {
    return 2 * sealantUm / stepUm;
  }

  /** The class; NaN when a gauge is unknown. */
  public double level() {
    double filled = filled() + ROUNDING;
    if (Double.isNaN(filled)) {
      return Double.NaN;
    }
    if (filled >= FILLED) {
      return UNLIKELY;
    }
    return filled >= PARTLY_FILLED ? POSSIBLE : LIKELY;
  }
}
