package plyworth.plugins.recyclability;

import java.util.OptionalDouble;
import plyworth.shared.brief.Pack;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * One structure with every measure that rules may ask for.
 *
 * @param composition what it weighs
 * @param figures figures by {@link Measure}
 */
record Case(Composition composition, double[] figures) {

  /** Weighs and measures a structure whose composition is known. */
  static Case of(
      Structure structure, Composition composition, ScoringContext context, Judge judge) {
    double[] m = new double[Measure.COUNT];
    judge.exact(composition.state(), m);
    put(m, Measure.INK, composition.share(Family.INK));
    put(m, Measure.ADHESIVE, composition.share(Family.ADHESIVE));
    put(m, Measure.LACQUER, composition.share(Family.LACQUER));
    put(m, Measure.COATING, coatings(composition));
    put(m, Measure.SECOND_MATERIAL, second(m));
    put(m, Measure.RECYCLABLE_TOLERANT, judge.proxy().tolerant(m, composition));
    put(m, Measure.REJECT, judge.yield().reject(m));
    put(m, Measure.PRINT_COVERAGE, printCoverage(structure, context));
    put(m, Measure.SMALLER_SIDE, smallerSide(context.brief().pack()));
    put(m, Measure.LABORATORY_CERTIFICATE, context.parameter("laboratory-certificate"));
    put(m, Measure.TAKE_BACK_EVIDENCE, context.parameter("take-back-evidence"));
    put(m, Measure.RECYCLED_CONTENT, context.parameter("recycled-content") / 100);
    return new Case(composition, m);
  }

  /** A figure. */
  double of(Measure measure) {
    return figures[measure.ordinal()];
  }

  /** Whether a figure is above zero. */
  boolean has(Measure measure) {
    return of(measure) > 0;
  }

  /** The same with the tolerant share in place of the strict one. */
  Case tolerant() {
    double[] other = figures.clone();
    put(other, Measure.RECYCLABLE, of(Measure.RECYCLABLE_TOLERANT));
    return new Case(composition, other);
  }

  private static double coatings(Composition composition) {
    return composition.share(Family.LACQUER)
        + composition.share(Family.COATING)
        + composition.share(Family.PVDC)
        + composition.share(Family.PVOH);
  }

  private static double second(double[] m) {
    double paper = m[Measure.FIBRE.ordinal()];
    double plastic = m[Measure.PLASTIC_LAYERS.ordinal()];
    double metal = m[Measure.FOIL.ordinal()] + m[Measure.VAPOUR_METAL.ordinal()];
    return Math.max(Math.min(paper, plastic), Math.min(Math.max(paper, plastic), metal));
  }

  private static double printCoverage(Structure structure, ScoringContext context) {
    OptionalDouble largest =
        structure.layers().stream()
            .filter(layer -> context.kinds(layer).contains("ink"))
            .mapToDouble(Layer::coverage)
            .max();
    return largest.orElse(0);
  }

  private static double smallerSide(Pack pack) {
    return Math.min(pack.widthMm(), pack.lengthMm());
  }

  private static void put(double[] m, Measure measure, double figure) {
    m[measure.ordinal()] = figure;
  }
}
