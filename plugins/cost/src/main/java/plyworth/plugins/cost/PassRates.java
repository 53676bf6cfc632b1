package plyworth.plugins.cost;

/**
 * What a pass takes: waste and time (analytic). NaN is passed on.
 *
 * @param setupHours hours before the first good metre
 * @param setupWasteM2 area lost in set-up, m²
 * @param runningWaste share of the running input that is lost, from 0 to below 1
 * @param minutesPerM2 running minutes per m² of running input, stops included: 1/(v·B·ε)
 * @param hourRate EUR/h
 */
record PassRates(
    double setupHours,
    double setupWasteM2,
    double runningWaste,
    double minutesPerM2,
    double hourRate) {

  /** The same pass on a web that takes more minutes per m². */
  PassRates slowedBy(double moreMinutesPerM2) {
    return new PassRates(
        setupHours, setupWasteM2, runningWaste, minutesPerM2 + moreMinutesPerM2, hourRate);
  }

  /** Area that runs through, m²: R = O/(1 − w). */
  double runningInput(double outputM2) {
    return outputM2 / (1 - runningWaste);
  }

  /** Area that must enter, m²: I = R + S. */
  double input(double outputM2) {
    return runningInput(outputM2) + setupWasteM2;
  }

  /** Machine hours: h = set-up + R/(60·v·B·ε). */
  double hours(double outputM2) {
    return setupHours + runningInput(outputM2) * minutesPerM2 / 60;
  }

  /** Machine cost, EUR. */
  double cost(double outputM2) {
    return hours(outputM2) * hourRate;
  }

  /** Running cost per m² of running input, EUR. */
  double runningCostPerM2() {
    return minutesPerM2 / 60 * hourRate;
  }
}
