package plyworth.workbench.robustness.turn;

/**
 * A figure of an input at which the lead changes.
 *
 * @param figure the figure
 * @param overtakes whether the structure that is behind at present leads just beyond it, seen from
 *     the present figure; otherwise it falls behind again there
 * @param step whether the lead jumps there, because a block, a limit or a class changes, rather
 *     than passing through level
 */
public record Turn(double figure, boolean overtakes, boolean step) {

  /**
   * How far it is from a present figure: |ln| of the factor; infinite where there is no factor.
   *
   * @param present the present figure
   */
  double change(double present) {
    double factor = figure / present;
    return factor > 0 && Double.isFinite(factor)
        ? Math.abs(Math.log(factor))
        : Double.POSITIVE_INFINITY;
  }
}
