package plyworth.plugins.machinability;

/**
 * The figures of one structure on one machine; NaN where they are unknown.
 *
 * @param dwellS dwell the thickest zone of the seal needs at the set jaw temperature, s
 * @param coolestC coolest jaws that seal at the machine's dwell, °C
 * @param hottestC hottest jaws that spoil nothing at the machine's dwell, °C
 * @param windowK jaw window, K
 * @param packs packs a minute and lane
 * @param attackClass class of attack
 * @param blocked blocking bits, in the order of {@link Criteria#RULES}
 */
record Verdict(
    double dwellS,
    double coolestC,
    double hottestC,
    double windowK,
    double packs,
    int attackClass,
    long blocked) {}
