package plyworth.shared.brief;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import plyworth.shared.material.Property;
import plyworth.shared.quantity.Range;

/**
 * A product of the library: how it holds water, and what spoils it.
 *
 * @param id identifier, for example {@code skim-milk-powder}
 * @param name name on screens
 * @param law how it holds water; empty when that is not known well enough to reckon with
 * @param figures sourced figures by id: the constants of the law, how far it holds, when the
 *     product is spoilt
 * @param note remark; may be empty
 */
public record KnownProduct(
    String id, String name, Optional<Sorption> law, Map<String, Property> figures, String note)
    implements Sorption {

  /** Id of the figure: water activity at which it is spoilt. */
  public static final String CRITICAL_ACTIVITY = "critical-activity";

  /** Id of the figure: moisture on dry basis at which it is spoilt. */
  public static final String CRITICAL_MOISTURE = "critical-moisture";

  /** Id of the figure: lowest water activity that the law was found at. */
  public static final String LOWEST_ACTIVITY = "lowest-activity";

  /** Id of the figure: highest water activity that the law holds at. */
  public static final String HIGHEST_ACTIVITY = "highest-activity";

  private static final int BISECTIONS = 50;

  /** Sorts the figures. */
  public KnownProduct {
    figures = Collections.unmodifiableMap(new TreeMap<>(figures));
  }

  /**
   * The isotherm at a temperature.
   *
   * @throws IllegalArgumentException when it is not known
   */
  @Override
  public Isotherm at(double celsius) {
    return law.orElseThrow(
            () ->
                new IllegalArgumentException(
                    "how the product \"" + id + "\" holds water is not known; give an isotherm"))
        .at(celsius);
  }

  /** A figure; unknown when it is not there. */
  public Range figure(String figureId) {
    return Optional.ofNullable(figures.get(figureId)).map(Property::range).orElse(Range.UNKNOWN);
  }

  /**
   * Water activity at which it is spoilt: the one that is given, else the one at which the isotherm
   * holds the critical moisture, else the deliquescence point; NaN when none is known.
   */
  public double criticalActivity(double celsius) {
    Range given = figure(CRITICAL_ACTIVITY);
    if (given.known() || law.isEmpty()) {
      return given.typical();
    }
    Isotherm isotherm = at(celsius);
    return isotherm instanceof Isotherm.Deliquescent crystals
        ? crystals.deliquescence()
        : activityOf(figure(CRITICAL_MOISTURE).typical(), isotherm);
  }

  /**
   * Refuses a water activity beyond what the isotherm holds for.
   *
   * @throws IllegalArgumentException when it is beyond
   */
  void refuseBeyond(double activity) {
    double highest = figure(HIGHEST_ACTIVITY).typical();
    if (activity > highest) {
      throw new IllegalArgumentException(
          ("the isotherm of " + id + " holds up to a water activity of " + highest)
              + (", not of " + activity + "; lower it, or give an isotherm of your own"));
    }
  }

  private static double activityOf(double moisture, Isotherm isotherm) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < BISECTIONS && !Double.isNaN(moisture); i++) {
      double middle = (low + high) / 2;
      if (isotherm.moisture(middle) < moisture) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Double.isNaN(moisture) ? Double.NaN : low;
  }
}
