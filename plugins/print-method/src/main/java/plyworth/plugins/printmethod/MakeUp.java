package plyworth.plugins.printmethod;

import plyworth.shared.route.Process;
import plyworth.shared.scoring.ScoringContext;

/**
 * Mass fractions of a liquid as it is put down, press-ready after thinning. They add up to 1.
 *
 * @param solids what stays, above 0 up to 1
 * @param water water
 * @param solvent volatile organics
 */
public record MakeUp(double solids, double water, double solvent) {

  /** Solids from which a liquid counts as setting whole (judgement). */
  private static final double WHOLE = 0.9;

  /**
   * The make-up of a process: its {@code ink-} figures for print, else its {@code adhesive-} ones.
   *
   * <p>Solids are taken as drawn; water and solvent share what is left in the proportion of their
   * figures, so that one draw of the uncertain figures still adds up. One fraction may be missing:
   * it is the rest. With two missing, all is NaN.
   */
  static MakeUp of(ScoringContext context, Process process, String prefix) {
    double solids = context.figure(process, prefix + "solids");
    double water = context.figure(process, prefix + "water");
    double solvent = context.figure(process, prefix + "voc");
    if (Double.isNaN(solids)) {
      solids = 1 - water - solvent;
    } else if (Double.isNaN(water)) {
      water = 1 - solids - solvent;
    } else if (Double.isNaN(solvent)) {
      solvent = 1 - solids - water;
    }
    double volatiles = water + solvent;
    double scale = volatiles == 0 ? 0 : (1 - solids) / volatiles;
    return new MakeUp(volatiles == 0 ? 1 : solids, water * scale, solvent * scale);
  }

  /** What the liquid dries by. */
  public InkKind kind() {
    if (water > 0) {
      return InkKind.WATER;
    }
    return solids >= WHOLE ? InkKind.CURED : InkKind.SOLVENT;
  }

  /** Wet lay-down in g/m² of a dry lay-down in g/m². */
  public double wet(double dry) {
    return dry / solids;
  }

  /** Volatile organics per mass of solids, kg/kg: R = v/s. */
  public double solventPerSolids() {
    return solvent / solids;
  }

  /**
   * This liquid with thinner added: s = s₀/(1 + d), w = w₀/(1 + d), v = (v₀ + d)/(1 + d). Mass
   * balance.
   *
   * @param thinner kg of pure organic thinner per kg of this liquid
   */
  public MakeUp thinned(double thinner) {
    double whole = 1 + thinner;
    return new MakeUp(solids / whole, water / whole, (solvent + thinner) / whole);
  }

  /**
   * The liquid as supplied, before thinner was added: the inverse of {@link #thinned}.
   *
   * @param thinner kg of thinner per kg of liquid as supplied
   */
  public MakeUp asSupplied(double thinner) {
    double whole = 1 + thinner;
    return new MakeUp(solids * whole, water * whole, solvent * whole - thinner);
  }

  /**
   * The make-up by mass of a liquid whose solids are stated by volume, without water.
   *
   * @param liquidDensity kg/L
   * @param solventDensity kg/L
   * @param solidsByVolume volume share of solids
   */
  public static MakeUp ofVolume(
      double liquidDensity, double solventDensity, double solidsByVolume) {
    double solvent = (1 - solidsByVolume) * solventDensity / liquidDensity;
    return new MakeUp(1 - solvent, 0, solvent);
  }
}
