package plyworth.plugins.machinability;

import plyworth.shared.brief.Machine;

/**
 * The cycle of an intermittent filling machine: 60 / (feed + jaw travel + factor · dwell + cooling)
 * packs a minute and lane, and never more than filling allows (statics of the cycle; the dwell
 * factor of 1.25 to 1.5 is common practice).
 *
 * @param feedS time to feed one repeat, s
 * @param heldS time the jaws stay shut, s
 * @param otherS jaw travel and cooling, s
 * @param fillLimit cycles a minute that filling allows
 */
record FillingCycle(double feedS, double heldS, double otherS, double fillLimit) {

  static FillingCycle of(Settings settings, double dwellS) {
    Machine machine = settings.machine();
    return new FillingCycle(
        feed(settings.pack().repeatMm() / 1000, machine.feedMs(), machine.accelerationMs2()),
        machine.dwellFactor() * dwellS,
        machine.jawTravelS() + machine.coolS(),
        machine.fillLimitPerMinute());
  }

  /**
   * Time to feed a length: L/v + v/a, or 2·√(L/a) when the web never reaches its speed.
   *
   * @param length m
   * @param speed m/s
   * @param acceleration m/s²
   */
  static double feed(double length, double speed, double acceleration) {
    return length >= speed * speed / acceleration
        ? length / speed + speed / acceleration
        : 2 * Math.sqrt(length / acceleration);
  }

  /** The same cycle with the jaws shut for another time. */
  FillingCycle held(double seconds) {
    return new FillingCycle(feedS, seconds, otherS, fillLimit);
  }

  /** Packs a minute if filling did not limit. */
  double unlimited() {
    return 60 / (feedS + heldS + otherS);
  }

  /** Packs a minute and lane. */
  double packsPerMinute() {
    return Math.min(fillLimit, unlimited());
  }

  /** What limits the rate: the filling, or else the longest part of the cycle. */
  String limit() {
    if (fillLimit <= unlimited()) {
      return "filling";
    }
    if (heldS >= Math.max(feedS, otherS)) {
      return "dwell";
    }
    return feedS >= otherS ? "feed" : "travel";
  }
}
