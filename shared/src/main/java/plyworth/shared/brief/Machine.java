package plyworth.shared.brief;

/**
 * The filling machine as set up for this pack.
 *
 * @param name generic name on screens
 * @param lanes packs side by side, at least 1
 * @param jawC temperature of the jaw faces, °C
 * @param jawSpreadK how far the hottest and coldest places of the jaws differ, K
 * @param contactWm2K contact conductance between jaw and web, W/(m²·K)
 * @param dwellS longest jaw dwell the machine can give at its rated speed, s
 * @param zone the thickest place of the seal
 * @param feedMs web speed while feeding, m/s
 * @param accelerationMs2 web acceleration, m/s²
 * @param jawTravelS time the jaws travel per cycle, s
 * @param dwellFactor how much longer than the bare heating time the jaws stay shut, at least 1
 * @param coolS cooling time per cycle, s
 * @param fillLimitPerMinute cycles a minute at most for filling, dosing and settling
 * @param hourRateEur cost of the running line, EUR/h
 * @param efficiency share of the time it makes good packs, above 0 up to 1
 * @param packingWaste share of packs rejected at filling, 0 up to below 1
 */
public record Machine(
    String name,
    int lanes,
    double jawC,
    double jawSpreadK,
    double contactWm2K,
    double dwellS,
    SealZone zone,
    double feedMs,
    double accelerationMs2,
    double jawTravelS,
    double dwellFactor,
    double coolS,
    double fillLimitPerMinute,
    double hourRateEur,
    double efficiency,
    double packingWaste) {

  /** How many laminates lie between the jaws where the seal is thickest. */
  public enum SealZone {
    /** One laminate against one. */
    ONE_ON_ONE,
    /** One against two: a lap crossing. */
    ONE_ON_TWO,
    /** One against three: a fin crossing or a gusset. */
    ONE_ON_THREE
  }

  /** Checks the figures. */
  public Machine {
    Check.between("the number of lanes", lanes, 1, 100, "");
    Check.between("the jaw temperature", jawC, 20, 350, "°C");
    Check.between("the spread of the jaw temperature", jawSpreadK, 0, 100, "K");
    Check.positive("the contact conductance", contactWm2K, "W/(m²·K)");
    Check.positive("the dwell", dwellS, "s");
    Check.positive("the feed speed", feedMs, "m/s");
    Check.positive("the acceleration", accelerationMs2, "m/s²");
    Check.notNegative("the jaw travel", jawTravelS, "s");
    Check.between("the dwell factor", dwellFactor, 1, 10, "");
    Check.notNegative("the cooling time", coolS, "s");
    Check.positive("the filling limit", fillLimitPerMinute, "cycles/min");
    Check.notNegative("the hour rate", hourRateEur, "EUR/h");
    Check.between("the efficiency", efficiency, 1e-6, 1, "");
    Check.between("the packing waste", packingWaste, 0, 0.99, "");
  }
}
