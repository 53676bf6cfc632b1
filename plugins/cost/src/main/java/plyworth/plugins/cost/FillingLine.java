package plyworth.plugins.cost;

import plyworth.shared.brief.Machine;

/**
 * The filling line as a cost (analytic).
 *
 * @param machine the line of the brief
 */
record FillingLine(Machine machine) {

  /**
   * Cost of the running line per 1000 packs, EUR: hour rate / (60 · lanes · packs per minute ·
   * efficiency) · 1000.
   *
   * @param packsPerMinute per lane; NaN, the unknown, is passed on
   */
  double perThousand(double packsPerMinute) {
    double packsPerHour = 60 * machine.lanes() * packsPerMinute * machine.efficiency();
    return machine.hourRateEur() / packsPerHour * 1000;
  }

  /** Cost per 1000 good packs, EUR: (film + line) / (1 − packing waste). */
  double perThousandGood(double filmPerThousand, double linePerThousand) {
    return (filmPerThousand + linePerThousand) / (1 - machine.packingWaste());
  }

  /** A number of packs per minute, NaN when the line cannot run at it. */
  static double runnable(double packsPerMinute) {
    return packsPerMinute > 0 && Double.isFinite(packsPerMinute) ? packsPerMinute : Double.NaN;
  }
}
