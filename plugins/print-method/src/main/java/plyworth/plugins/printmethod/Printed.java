package plyworth.plugins.printmethod;

import java.util.Optional;
import java.util.Set;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Side;

/**
 * Print meeting the surface that it is printed on, as two neighbouring layers show it.
 *
 * @param ink the print layer next to the surface: ink, varnish or primer
 * @param web the layer whose face is printed
 * @param surface the class of that face
 * @param reverse whether the ink lies inside the web
 * @param primed whether the print layer is a primer
 * @param provisional whether the web is a coating inside the print: it is the printed surface in
 *     surface print, but covers the print where the structure is printed in reverse
 */
record Printed(
    Layer ink, Layer web, Surface surface, boolean reverse, boolean primed, boolean provisional) {

  /** The printed surface that a layer and its outer neighbour make, if any. */
  static Optional<Printed> at(Layer layer, Layer outer, ScoringContext context) {
    if (outer == null) {
      return Optional.empty();
    }
    ProcessRole role = context.processes().role(layer);
    ProcessRole outerRole = context.processes().role(outer);
    if (outerRole == ProcessRole.PRINT) {
      return switch (role) {
        case WEB -> surfacePrint(outer, layer, false, context);
        case COATING -> surfacePrint(outer, layer, true, context);
        case PRINT -> otherPress(outer, layer, context);
        default -> Optional.empty();
      };
    }
    return role == ProcessRole.PRINT && outerRole != ProcessRole.BOND
        ? reversePrint(layer, outer, context)
        : Optional.empty();
  }

  private static Optional<Printed> surfacePrint(
      Layer ink, Layer web, boolean provisional, ScoringContext context) {
    Set<String> kinds = context.kinds(web);
    Surface surface = Surface.of(kinds, web.side() == Side.METAL_OUT);
    return printable(surface)
        ? Optional.of(new Printed(ink, web, surface, false, primer(ink, context), provisional))
        : Optional.empty();
  }

  private static Optional<Printed> reversePrint(Layer ink, Layer web, ScoringContext context) {
    Set<String> kinds = context.kinds(web);
    Surface surface = Surface.of(kinds, web.side() != Side.METAL_OUT);
    return printable(surface)
        ? Optional.of(new Printed(ink, web, surface, true, primer(ink, context), false))
        : Optional.empty();
  }

  /** Ink on a primer that another press put down: the primer is its surface. */
  private static Optional<Printed> otherPress(Layer outer, Layer inner, ScoringContext context) {
    if (outer.process().equals(inner.process())) {
      return Optional.empty();
    }
    boolean innerIsPrimer = primer(inner, context);
    if (innerIsPrimer == primer(outer, context)) {
      return Optional.empty();
    }
    Layer primer = innerIsPrimer ? inner : outer;
    Layer ink = innerIsPrimer ? outer : inner;
    Surface surface = Surface.of(context.kinds(primer), false);
    return Optional.of(new Printed(ink, primer, surface, false, false, false));
  }

  private static boolean printable(Surface surface) {
    return !surface.face().equals("overprint");
  }

  private static boolean primer(Layer layer, ScoringContext context) {
    return Surface.of(context.kinds(layer), false).face().equals("primer");
  }
}
