package plyworth.shared.brief;

/**
 * What is ordered at a time.
 *
 * @param packs packs in one order
 * @param orders orders made with one set of print tools
 * @param newColours colours that need new tools
 * @param motherWebMm width of the web in the plant, mm
 * @param edgeTrimMm trim on each side, mm
 */
public record Order(
    double packs, double orders, double newColours, double motherWebMm, double edgeTrimMm) {

  /** Checks the figures. */
  public Order {
    Check.positive("the order size", packs, "packs");
    Check.positive("the number of orders", orders, "");
    Check.notNegative("the number of new colours", newColours, "");
    Check.positive("the width of the mother web", motherWebMm, "mm");
    Check.notNegative("the edge trim", edgeTrimMm, "mm");
  }
}
